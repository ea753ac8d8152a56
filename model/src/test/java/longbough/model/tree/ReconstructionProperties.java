package longbough.model.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longbough.model.PlayedTrees;
import longbough.model.geometry.Allometry;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;
import longbough.model.tree.MeasuredTree.KnownCavity;
import longbough.model.tree.MeasuredTree.MeasuredLimb;
import longbough.model.tree.MeasuredTree.OldWound;
import longbough.shared.trait.SpeciesLibrary;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;

/**
 * Measured trees of all species, from stunted to overgrown, come out of the reconstruction as
 * measured.
 */
class ReconstructionProperties {
  private static final Offset<Double> EXACT = within(1e-9);

  @Provide
  Arbitrary<String> species() {
    return Arbitraries.of(SpeciesLibrary.load().ids());
  }

  private static MeasuredTree tree(
      SpeciesParameters s,
      Random r,
      List<KnownCavity> cavities,
      List<OldWound> wounds,
      List<MeasuredLimb> limbs) {
    double dbh = 0.04 + 1.1 * r.nextDouble() * r.nextDouble();
    double height = Math.max(3, Allometry.heightM(s, dbh) * (0.6 + 0.9 * r.nextDouble()));
    double base = height * (0.03 + 0.7 * r.nextDouble());
    double[] spread = new double[4];
    for (int i = 0; i < 4; i++) {
      spread[i] = Allometry.crownDiameterM(s, dbh) * (0.4 + 1.2 * r.nextDouble());
    }
    return new MeasuredTree(
        dbh, height, base, spread, r.nextDouble(), cavities, wounds, 0.5 * r.nextDouble(), limbs);
  }

  @Property(tries = 400, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void measuresComeOutAsMeasured(@ForAll("species") String species, @ForAll long seed) {
    ModelParameters p = PlayedTrees.parameters(species);
    Random r = new Random(seed);
    MeasuredTree tree = tree(p.species(), r, List.of(), List.of(), List.of());
    TreeState state = TreeReconstruction.build(tree, p, r.nextDouble());
    assertThat(state.trunk.dbhM()).isCloseTo(tree.dbhM(), EXACT);
    assertThat(state.trunk.heightM).isCloseTo(tree.heightM(), EXACT);
    assertThat(state.heightM()).isCloseTo(tree.heightM(), EXACT);
    assertThat(state.crownBaseM()).isCloseTo(tree.crownBaseM(), EXACT);
    for (int sector = 0; sector < 4; sector++) {
      assertThat(reachM(state, sector * Math.PI / 2))
          .as("sector " + sector)
          .isCloseTo(tree.spreadM()[sector] / 2, EXACT);
    }
    assertThat(state.vitality.alive).isTrue();
    assertThat(state.roots.plateLost).isEqualTo(tree.rootPlateLost());
    assertThat(state.pools.reserveKgC).isBetween(0.0, state.pools.reserveCeilingKgC);
    sound(state);
  }

  /** Reach of the limb that points just there. */
  private static double reachM(TreeState state, double azimuthRad) {
    double reach = Double.NaN;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      if (state.limbs.azimuthRad[limb] == azimuthRad && !(reach > state.limbs.reachM(limb))) {
        reach = state.limbs.reachM(limb);
      }
    }
    return reach;
  }

  // Plain checks: fluent assertions over every zone would take long.
  private static void sound(TreeState state) {
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      boolean good =
          limbs.baseDiameterM[limb] > 0
              && limbs.baseDiameterM[limb] < 2 * state.trunk.dbhM()
              && limbs.woodKgC[limb] > 0
              && limbs.tipHeightM(limb) <= state.trunk.heightM + 1e-9;
      for (int zone = 3 * limb; zone < 3 * limb + 3; zone++) {
        good &=
            limbs.fullLeafAreaM2[zone] >= 0
                && limbs.leafAreaM2[zone] >= 0
                && limbs.budFullness[zone] >= 0
                && limbs.budFullness[zone] <= 1;
      }
      assertThat(good).as("limb " + limb).isTrue();
    }
    for (int station = 0; station < state.trunk.stations; station++) {
      assertThat(state.trunk.radiusM[station]).isPositive().isFinite();
    }
    assertThat(Double.isFinite(state.totalKgC()) && state.totalKgC() > 0).isTrue();
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void aLimbInventoryIsKept(@ForAll("species") String species, @ForAll long seed) {
    ModelParameters p = PlayedTrees.parameters(species);
    Random r = new Random(seed);
    MeasuredTree bare = tree(p.species(), r, List.of(), List.of(), List.of());
    List<MeasuredLimb> limbs = new ArrayList<>();
    int count = 2 + r.nextInt(40);
    for (int limb = 0; limb < count; limb++) {
      double share = limb / (double) count;
      double height = bare.crownBaseM() + share * (bare.heightM() - bare.crownBaseM());
      boolean full = r.nextBoolean();
      limbs.add(
          new MeasuredLimb(
              height,
              bare.dbhM() * (0.05 + 0.4 * r.nextDouble()),
              full ? 1 + 4 * r.nextDouble() : Double.NaN,
              full ? 360 * r.nextDouble() : Double.NaN,
              full ? 20 + 60 * r.nextDouble() : Double.NaN,
              limb > 0 && r.nextInt(8) == 0));
    }
    MeasuredTree tree =
        new MeasuredTree(
            bare.dbhM(),
            bare.heightM(),
            bare.crownBaseM(),
            bare.spreadM(),
            bare.condition(),
            List.of(),
            List.of(),
            0,
            limbs);
    TreeState state = TreeReconstruction.build(tree, p, 0.9);
    assertThat(state.limbs.count).isEqualTo(count);
    assertThat(state.trunk.dbhM()).isCloseTo(tree.dbhM(), EXACT);
    assertThat(state.crownBaseM()).isCloseTo(tree.crownBaseM(), EXACT);
    for (int limb = 0; limb < count; limb++) {
      MeasuredLimb one = limbs.get(limb);
      assertThat(state.limbs.heightM[limb]).isEqualTo(one.heightM());
      assertThat(state.limbs.baseDiameterM[limb]).isEqualTo(one.baseDiameterM());
      assertThat(LimbStatus.of(state.limbs.status[limb]))
          .isEqualTo(one.dead() ? LimbStatus.DEAD : LimbStatus.ALIVE);
      if (!Double.isNaN(one.lengthM())) {
        assertThat(state.limbs.lengthM[limb]).isEqualTo(one.lengthM());
        assertThat(Math.toDegrees(state.limbs.azimuthRad[limb])).isCloseTo(one.bearingDeg(), EXACT);
        assertThat(Math.toDegrees(state.limbs.insertionRad[limb]))
            .isCloseTo(one.insertionDeg(), EXACT);
      }
      assertThat(one.dead() && state.limbs.leafAreaM2(limb) > 0)
          .as("leaves on a dead limb")
          .isFalse();
    }
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE, seed = "20260101")
  void oldDamageBecomesWoundRecordsWithinTheTrunk(
      @ForAll("species") String species, @ForAll long seed) {
    ModelParameters p = PlayedTrees.parameters(species);
    Random r = new Random(seed);
    double open = r.nextBoolean() ? 0.1 * r.nextDouble() : 0;
    KnownCavity cavity =
        new KnownCavity(1 + r.nextDouble(), 0.5 + r.nextDouble(), 0.02, 360 * r.nextDouble(), open);
    OldWound wound =
        new OldWound(
            1.5, 0.02, r.nextBoolean() ? 8 : Double.NaN, 90, r.nextBoolean() ? 0.01 : Double.NaN);
    MeasuredTree tree = tree(p.species(), r, List.of(cavity), List.of(wound), List.of());
    TreeState state = TreeReconstruction.build(tree, p, 0.9);
    Wounds wounds = state.wounds;
    assertThat(wounds.count).isEqualTo(2);
    double radius = state.trunk.radiusAtM(cavity.heightM());
    assertThat(wounds.heightM[0]).isEqualTo(cavity.heightM());
    assertThat(wounds.columnUpM[0] + wounds.columnDownM[0]).isCloseTo(cavity.lengthM(), EXACT);
    assertThat(wounds.parentRadiusM[0]).isBetween(0.0, radius);
    assertThat(wounds.columnDepthM[0]).isLessThanOrEqualTo(wounds.parentRadiusM[0]);
    assertThat(wounds.open(0)).isEqualTo(open > 0);
    if (open == 0) {
      assertThat(radius - wounds.parentRadiusM[0])
          .as("sound wall")
          .isCloseTo(Math.min(radius, 0.02), EXACT);
    }
    assertThat(Math.toDegrees(wounds.azimuthRad[0])).isCloseTo(cavity.bearingDeg(), EXACT);
    assertThat(wounds.cutDiameterM[1]).isEqualTo(0.02);
    assertThat(wounds.parentRadiusM[1]).isBetween(0.01, Math.max(0.01, state.trunk.radiusAtM(1.5)));
    assertThat(wounds.open(1)).isEqualTo(!Double.isNaN(wound.openWidthM()));
    assertThat(wounds.year[1]).isNegative();
  }

  /**
   * Trees of 40 cm: leaf area of large deciduous ones 58 to 1,090 m2, of evergreen conifers 26 to
   * 984 m2. Urban tree database, McPherson E.G., van Doorn N.S., Peper P.J. 2016, doi
   * 10.2737/RDS-2016-0005, 95 % band of a fit over seven temperate cities. Broadleaved evergreens
   * are held against the first band.
   */
  @Example
  void leafAreaLiesWithinTheBandsOfTheData() {
    for (String id : SpeciesLibrary.load().ids()) {
      ModelParameters p = PlayedTrees.parameters(id);
      double leaf =
          fullLeafM2(TreeReconstruction.build(PlayedTrees.tree(p.species(), 0.4, 1), p, 0.9));
      boolean needle = p.species().conifer() && p.species().evergreen();
      assertThat(leaf).as(id).isBetween(needle ? 26.0 : 58.0, needle ? 984.0 : 1090.0);
    }
  }

  static double fullLeafM2(TreeState state) {
    double sum = 0;
    for (int zone = 0; zone < state.limbs.count * Limbs.ZONES; zone++) {
      sum += state.limbs.fullLeafAreaM2[zone] * state.limbs.budFullness[zone];
    }
    return sum;
  }
}
