package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.shared.source.ParameterTable;
import longbough.shared.trait.SpeciesLibrary;
import org.junit.jupiter.api.Test;

/** A stem of even thickness with one limb near its top and one halfway. */
class RingSharesTest {
  private static final double UPPER_M = 9;
  private static final double LOWER_M = 5;
  private static final int BREAST = 3;
  private static final int ABOVE_LOWER = 12;

  private final TreeState state = tree();

  /** Pressler's rule: below the crown the same area at all heights, above as leaves above. */
  @Test
  void withoutSwayAreaFollowsTheLeavesAbove() {
    RingShares shares = shares(0);
    assertThat(shares.trunk(BREAST + 1)).isCloseTo(1, within(0.04));
    assertThat(shares.trunk(ABOVE_LOWER)).isCloseTo(0.5, within(0.01));
    assertThat(shares.limb(0)).isCloseTo(0.5, within(1e-12));
    assertThat(shares.limb(1)).isCloseTo(0.5, within(1e-12));
  }

  /** Of two limbs with the same leaves the one that bends more gets the wider ring. */
  @Test
  void swaySendsWoodToTheThinnerLimb() {
    state.limbs.baseDiameterM[1] = 0.8 * state.limbs.baseDiameterM[0];
    RingShares shares = shares(0.5);
    assertThat(shares.limb(1)).isGreaterThan(1.2 * shares.limb(0));
  }

  /** A shorter lever strains the trunk less, and the limbs take more of the year's wood. */
  @Test
  void aShorterLeverLeavesTheTrunkLess() {
    double tall = overLimbs(shares(0.5));
    state.limbs.heightM[0] = LOWER_M;
    double low = overLimbs(shares(0.5));
    assertThat(low).isLessThan(0.9 * tall);
    state.limbs.heightM[0] = UPPER_M;
    double still = overLimbs(shares(0));
    state.limbs.heightM[0] = LOWER_M;
    assertThat(overLimbs(shares(0))).isCloseTo(still, within(1e-12));
  }

  /** A limb that doesn't pay its way makes no ring. */
  @Test
  void aHungryLimbGetsNothing() {
    state.limbs.hungryYears[0] = 1;
    assertThat(shares(0.5).limb(0)).isZero();
  }

  private static double overLimbs(RingShares shares) {
    return shares.trunk(BREAST) / (shares.limb(0) + shares.limb(1));
  }

  private RingShares shares(double sway) {
    ParameterTable table = PlayedTrees.table("tilia-cordata");
    ModelParameters p =
        ModelParameters.of(
            SpeciesLibrary.load().get("tilia-cordata"),
            PlayedTrees.with(table, "allocation.sway_share", sway));
    RingShares shares = new RingShares();
    shares.read(state, p);
    return shares;
  }

  private static TreeState tree() {
    TreeState tree = new TreeState();
    Trunk trunk = tree.trunk;
    trunk.heightM = 10;
    trunk.stations = (int) (trunk.heightM / Trunk.STATION_STEP_M) + 1;
    java.util.Arrays.fill(trunk.radiusM, 0, trunk.stations, 0.1);
    Limbs limbs = tree.limbs;
    limbs.count = 2;
    for (int limb = 0; limb < 2; limb++) {
      limbs.status[limb] = LimbStatus.ALIVE.code();
      limbs.heightM[limb] = limb == 0 ? UPPER_M : LOWER_M;
      limbs.insertionRad[limb] = Math.PI / 2;
      limbs.lengthM[limb] = 3;
      limbs.baseDiameterM[limb] = 0.05;
      limbs.leafAreaM2[limb * Limbs.ZONES + Limbs.MIDDLE] = 10;
    }
    return tree;
  }
}
