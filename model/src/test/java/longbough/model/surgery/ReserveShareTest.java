package longbough.model.surgery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.process.ReserveCeiling;
import longbough.model.state.LimbStatus;
import longbough.model.state.Organ;
import longbough.model.state.TreeState;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;
import org.junit.jupiter.api.Test;

class ReserveShareTest {

  private static final ModelParameters ALL = lime();
  private static final SpeciesParameters LIME = ALL.species();

  private static ModelParameters lime() {
    SpeciesTraits traits = SpeciesLibrary.load().get("tilia-cordata");
    return ModelParameters.of(traits, ParameterLibrary.general().with(traits.numbers()));
  }

  /**
   * Two limbs of 6 kg, 100 kg of sapwood, 40 kg of coarse and 2 kg of fine roots, sapwood
   * throughout.
   */
  private static TreeState tree() {
    TreeState state = new TreeState();
    state.trunk.sapwoodShare = 1;
    state.trunk.stations = 20;
    state.trunk.heightM = 10;
    java.util.Arrays.fill(state.trunk.radiusM, 0, 20, 0.2);
    state.limbs.count = 2;
    for (int limb = 0; limb < 2; limb++) {
      state.limbs.status[limb] = LimbStatus.ALIVE.code();
      state.limbs.baseDiameterM[limb] = 0.08;
      state.limbs.woodKgC[limb] = 6;
    }
    state.pools.trunkSapwoodKgC = 100;
    state.pools.coarseRootKgC = 40;
    state.pools.fineRootKgC = 2;
    state.pools.reserveKgC = 5;
    ReserveCeiling.set(state, ALL);
    state.pools.stores.even(state.pools.reserveCeilingKgC);
    return state;
  }

  private static ReserveShare begin(TreeState state) {
    ReserveShare share = new ReserveShare();
    share.begin(state, ALL);
    return share;
  }

  @Test
  void aLimbTakesWhatItsLivingWoodHolds() {
    TreeState state = tree();
    double branch = LIME.reserveBranchMax() * ALL.reserve().branchLivingShare() * 6;
    double stem = ALL.reserve().stemMax(LIME, state.trunk.dbhM() / 2, state.trunk.sapwoodShare);
    double rest = stem * 100 + LIME.reserveRootMax() * 40;
    double expected = 5 * branch / (2 * branch + rest);
    assertThat(begin(state).takeWithLimb(0, 1)).isCloseTo(expected, within(1e-12));
    assertThat(state.pools.reserveKgC).isCloseTo(5 - expected, within(1e-12));
  }

  @Test
  void allPartsTogetherHoldAllButWhatTheRootsKeep() {
    TreeState state = tree();
    double roots = state.pools.storedKgC(Organ.ROOT);
    ReserveShare share = begin(state);
    share.takeWithLimb(0, 0.3);
    share.takeWithLimb(0, 0.7);
    share.takeWithLimb(1, 1);
    share.takeWithSapwood(100);
    assertThat(state.pools.reserveKgC).isCloseTo(roots, within(1e-12));
    assertThat(state.pools.storedKgC(Organ.ROOT)).isCloseTo(roots, within(1e-12));
  }

  @Test
  void aLimbTakesLittleWhereTheFlushHasEmptiedTheBranches() {
    TreeState late = tree();
    TreeState emptied = tree();
    emptied.pools.takeNear(0.8 * emptied.pools.storedKgC(Organ.BRANCH));
    double before = begin(late).takeWithLimb(0, 1);
    assertThat(begin(emptied).takeWithLimb(0, 1)).isCloseTo(0.2 * before, within(1e-12));
  }

  @Test
  void oneLimbAfterAnotherTakesAsMuchAsBothAtOnce() {
    TreeState state = tree();
    ReserveShare share = begin(state);
    double first = share.takeWithLimb(0, 1);
    state.limbs.clear(0);
    assertThat(share.takeWithLimb(1, 1)).isCloseTo(first, within(1e-12));
    // and a new reckoning of the smaller tree comes to the same
    TreeState again = tree();
    begin(again).takeWithLimb(0, 1);
    again.limbs.clear(0);
    assertThat(begin(again).takeWithLimb(1, 1)).isCloseTo(first, within(1e-12));
  }

  @Test
  void deadWoodHoldsNone() {
    TreeState state = tree();
    state.limbs.status[0] = LimbStatus.DEAD.code();
    assertThat(begin(state).takeWithLimb(0, 1)).isZero();
  }

  @Test
  void aCutLeavesEveryOrganFilledAsItWas() {
    TreeState state = tree();
    state.pools.take(Organ.BRANCH, 0.3);
    state.pools.take(Organ.ROOT, 0.1);
    double branch = fill(state, Organ.BRANCH);
    double stem = fill(state, Organ.STEM);
    double root = fill(state, Organ.ROOT);
    ReserveShare share = begin(state);
    share.takeWithLimb(0, 1);
    state.limbs.clear(0);
    share.takeWithSapwood(20);
    state.pools.trunkSapwoodKgC -= 20;
    ReserveCeiling.set(state, ALL);
    assertThat(fill(state, Organ.BRANCH)).isCloseTo(branch, within(1e-12));
    assertThat(fill(state, Organ.STEM)).isCloseTo(stem, within(1e-12));
    assertThat(fill(state, Organ.ROOT)).isCloseTo(root, within(1e-12));
  }

  private static double fill(TreeState state, Organ organ) {
    return state.pools.storedKgC(organ) / state.pools.stores.ceilingKgC(organ);
  }

  @Test
  void heartwoodIsReachedBeyondTheDepthOfTheSapwood() {
    TreeState thin = tree();
    thin.trunk.sapwoodShare = 0.19; // a rim of a tenth of 20 cm
    assertThat(SapwoodRim.depthM(thin.trunk)).isCloseTo(0.02, within(1e-12));
    assertThat(SapwoodRim.reachesHeartwood(thin.trunk, 0.021)).isTrue();
    assertThat(SapwoodRim.reachesHeartwood(thin.trunk, 0.019)).isFalse();
    assertThat(SapwoodRim.reachesHeartwood(tree().trunk, 0.04)).isFalse();
  }
}
