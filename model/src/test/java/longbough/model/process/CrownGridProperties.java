package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Leaves shared among cells: none is lost, and a little move changes a little. */
class CrownGridProperties {
  private static final double TOP_M = 20;
  private static final double LOWEST_M = 2;
  private static final double ROUNDING = 1e-9;
  private static final double MOVE = 0.1;

  /**
   * Limbs up a trunk that is higher than all of them, most near the ends, so that the grid reaches
   * from the first to the top.
   */
  private static TreeState tree(Random r) {
    TreeState state = new TreeState();
    state.trunk.heightM = TOP_M;
    Limbs limbs = state.limbs;
    limbs.count = 12 + r.nextInt(30);
    for (int limb = 0; limb < limbs.count; limb++) {
      limbs.status[limb] = LimbStatus.ALIVE.code();
      double up = (1 - Math.cos(Math.PI * limb / (limbs.count - 1))) / 2;
      limbs.heightM[limb] = LOWEST_M + 12 * up;
      limbs.azimuthRad[limb] = 6 * r.nextDouble();
      limbs.insertionRad[limb] = 0.5 + r.nextDouble();
      limbs.lengthM[limb] = 0.5 + 4 * r.nextDouble();
      for (int zone = 3 * limb; zone < 3 * limb + 3; zone++) {
        limbs.leafAreaM2[zone] = 1 + r.nextDouble();
      }
      state.sprouts.leafAreaM2[limb] = r.nextInt(3) == 0 ? r.nextDouble() : 0;
      state.sprouts.position[limb] = r.nextDouble();
      state.sprouts.lengthM[limb] = r.nextDouble();
    }
    return state;
  }

  private static double leafM2(TreeState state) {
    double sum = 0;
    for (double leaf : state.limbs.leafAreaM2) {
      sum += leaf;
    }
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      sum += state.sprouts.leafAreaM2[cohort];
    }
    return sum;
  }

  private static CrownLight placed(TreeState state, double uncutM) {
    CrownLight light = new CrownLight();
    new CrownGrid().place(state, light, uncutM);
    return light;
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void noLeafIsLostOrMade(@ForAll long seed) {
    Random r = new Random(seed);
    TreeState state = tree(r);
    for (int cohort = Limbs.MAX; cohort < Limbs.MAX + 8; cohort++) {
      state.sprouts.leafAreaM2[cohort] = r.nextInt(2) == 0 ? r.nextDouble() : 0;
      state.sprouts.lengthM[cohort] = r.nextDouble();
    }
    CrownLight light = placed(state, 8 * r.nextDouble());
    double sum = 0;
    for (double leaf : light.leafAreaM2) {
      assertThat(leaf).isGreaterThanOrEqualTo(0);
      sum += leaf;
    }
    assertThat(sum).isCloseTo(leafM2(state), within(ROUNDING * sum));
  }

  /**
   * Leaf that moves by a tenth of a layer takes a tenth of itself from one layer to the next, and
   * no more: whatever lies on the borders between cells.
   */
  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void aLittleMoveChangesTheCellsLittle(@ForAll long seed) {
    Random r = new Random(seed);
    TreeState state = tree(r);
    CrownLight before = placed(state, 0);
    double layerM = (before.topM - before.bottomM) / CrownLight.LAYERS;
    for (int limb = 1; limb < state.limbs.count; limb++) {
      state.limbs.heightM[limb] += MOVE * layerM;
    }
    CrownLight after = placed(state, 0);
    assertThat(after.bottomM).as("same grid").isEqualTo(before.bottomM);
    assertThat(after.topM).as("same grid").isEqualTo(before.topM);
    assertThat(after.radiusM).as("same grid").isEqualTo(before.radiusM);
    double changed = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      changed += Math.abs(after.leafAreaM2[cell] - before.leafAreaM2[cell]);
    }
    double all = leafM2(state);
    assertThat(changed).isLessThanOrEqualTo(2 * MOVE * all + ROUNDING).isGreaterThan(0.01 * all);
  }
}
