package longbough.runner.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.SvgWriter;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Whatever the state, the drawings come out, and every number in them is finite. */
class RandomTreeProperties {

  @Property(tries = 150, seed = "20260101")
  void anyStateCanBeDrawn(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.3, max = 60) double heightM) {
    Random random = new Random(seed);
    List<YearState> years =
        List.of(
            new YearState(0, randomTree(random, heightM)),
            new YearState(40, randomTree(random, heightM * 1.2)));
    SpeciesLook look = random.nextBoolean() ? DrawingFixtures.LIME : DrawingFixtures.SPRUCE;
    for (Scene scene :
        List.of(
            TreeDrawing.elevation("any", years, look),
            TreeDrawing.trunkSection("any", years, look),
            TreeDrawing.crossSections("any", years, look))) {
      String svg = SvgWriter.write(scene);
      assertThat(svg).doesNotContain("NaN").doesNotContain("Infinity");
      assertThat(scene.height()).isBetween(100, 2000);
    }
  }

  private static TreeState randomTree(Random random, double heightM) {
    TreeState state = DrawingFixtures.trunk(random.nextInt(30), heightM, 0.02 * heightM);
    int limbs = random.nextInt(Limbs.MAX + 1);
    for (int limb = 0; limb < limbs; limb++) {
      double length = heightM * random.nextDouble();
      double insertion = Math.PI * 0.8 * random.nextDouble();
      DrawingFixtures.limb(
          state, limb, heightM * random.nextDouble(), length, insertion, 3 * random.nextDouble());
      state.limbs.status[limb] = (byte) random.nextInt(LimbStatus.values().length);
      state.limbs.tip[limb] = (byte) random.nextInt(TipState.values().length);
    }
    for (int i = random.nextInt(40); i > 0; i--) {
      int cohort = random.nextInt(Sprouts.MAX);
      double length = 4 * random.nextDouble();
      DrawingFixtures.sprouts(
          state, cohort, 30 * random.nextDouble(), length, random.nextDouble(), random.nextInt(9));
    }
    for (int i = random.nextInt(12); i > 0; i--) {
      double width = 0.4 * random.nextDouble() + 1e-6;
      double at = 1.3 * heightM * random.nextDouble();
      // -2 is a wound that is gone, -1 one on the trunk, the rest lie on limbs
      int wound = DrawingFixtures.wound(state, 0, at, 7 * random.nextDouble(), width, i);
      state.wounds.limb[wound] = random.nextInt(limbs + 2) - 2;
      state.wounds.acrossStem[wound] = random.nextBoolean();
    }
    topOrKill(state, random);
    return state;
  }

  private static void topOrKill(TreeState state, Random random) {
    if (random.nextInt(3) == 0) {
      state.trunk.leaderIntact = false;
      state.trunk.toppedAtM = state.trunk.heightM;
    }
    if (random.nextInt(4) == 0) {
      DrawingFixtures.die(state, CauseOfDeath.DROUGHT, 1);
    }
    state.vitality.worstStation = random.nextInt(state.trunk.stations + 1);
    state.vitality.worstDecayAreaFraction = random.nextDouble();
  }
}
