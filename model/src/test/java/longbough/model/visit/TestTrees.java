package longbough.model.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.VisitRow;
import longbough.model.parameter.ModelParameters;
import longbough.model.process.YearContext;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.model.random.RandomStream;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/** Trees and visits made up for tests: plausible sizes, every part of the state in use. */
final class TestTrees {
  static final CutMix COLLAR = new CutMix(1, 0, 0);
  static final CutMix FLUSH = new CutMix(0, 1, 0);
  static final CutMix STUB = new CutMix(0, 0, 1);
  static final CutMix MIXED = new CutMix(0.5, 0.3, 0.2);
  static final double PRICE = 80;

  private TestTrees() {}

  static ModelParameters parameters(String species) {
    SpeciesTraits traits = SpeciesLibrary.load().get(species);
    return ModelParameters.of(traits, ParameterLibrary.general().with(traits.numbers()));
  }

  /** A lime of 40 cm, 14 m high, forty even limbs from 3 m on, no defects, no sprouts. */
  static TreeState plain() {
    return plain(0.40, 14, 3, 40);
  }

  static TreeState plain(double dbhM, double heightM, double crownBaseM, int limbs) {
    TreeState state = trunk(dbhM, heightM, 0.7);
    state.limbs.count = limbs;
    for (int limb = 0; limb < limbs; limb++) {
      double share = limbs > 1 ? limb / (double) (limbs - 1) : 0;
      double attach = crownBaseM + share * 0.9 * (heightM - crownBaseM);
      limb(state, limb, attach, limb * 2.399963, dbhM, 0.9 - 0.5 * share);
    }
    return state;
  }

  /** A tree with dead limbs, stubs, sprouts, gaps in the arrays and wounds, all from the seed. */
  static TreeState random(long seed) {
    Random r = new Random(seed);
    double dbh = 0.05 + 0.9 * r.nextDouble();
    double height = 4 + 24 * r.nextDouble();
    TreeState state = trunk(dbh, height, 0.1 + 0.9 * r.nextDouble());
    state.limbs.count = 1 + r.nextInt(Limbs.MAX);
    for (int limb = 0; limb < state.limbs.count; limb++) {
      int kind = r.nextInt(10);
      if (kind == 0) {
        continue;
      }
      limb(
          state,
          limb,
          height * (0.05 + 0.94 * r.nextDouble()),
          2 * Math.PI * r.nextDouble(),
          dbh,
          r.nextDouble());
      if (kind == 1 || kind == 2) {
        state.limbs.clearFoliage(limb);
        state.limbs.status[limb] = (kind == 1 ? LimbStatus.DEAD : LimbStatus.STUB).code();
        state.limbs.deathYear[limb] = 0;
      }
      if (kind > 1 && r.nextBoolean()) {
        sprouts(state, limb, r);
      }
    }
    for (int cohort = Limbs.MAX; Sprouts.trunkHeightM(cohort) < height; cohort++) {
      if (r.nextBoolean()) {
        sprouts(state, cohort, r);
      }
    }
    if (r.nextInt(4) == 0) {
      state.trunk.leaderIntact = false;
      state.trunk.toppedAtM = height;
    }
    return state;
  }

  /** Takes the leaves off as in winter; the buds stay. */
  static void leafless(TreeState state) {
    java.util.Arrays.fill(state.limbs.leafAreaM2, 0);
    java.util.Arrays.fill(state.limbs.leafKgC, 0);
    java.util.Arrays.fill(state.sprouts.leafAreaM2, 0);
    java.util.Arrays.fill(state.sprouts.leafKgC, 0);
  }

  private static TreeState trunk(double dbhM, double heightM, double sapwoodShare) {
    TreeState state = new TreeState();
    Trunk trunk = state.trunk;
    trunk.heightM = heightM;
    trunk.leaderIntact = true;
    trunk.sapwoodShare = sapwoodShare;
    trunk.stations = (int) (heightM / Trunk.STATION_STEP_M) + 1;
    for (int s = 0; s < trunk.stations; s++) {
      double above = 1 - s * Trunk.STATION_STEP_M / heightM;
      trunk.radiusM[s] = dbhM / 2 * above / (1 - Trunk.BREAST_HEIGHT_M / heightM) + 0.002;
    }
    double wood = 60 * dbhM * dbhM * heightM;
    state.pools.trunkSapwoodKgC = wood * sapwoodShare;
    state.pools.trunkHeartwoodKgC = wood * (1 - sapwoodShare);
    state.pools.coarseRootKgC = 0.3 * wood;
    state.pools.fineRootKgC = 0.03 * wood;
    state.pools.reserveCeilingKgC = 0.1 * wood;
    state.pools.reserveKgC = 0.07 * wood;
    state.pools.reserveFloorKgC = 0.01 * wood;
    state.pools.singleLeafAge();
    state.year = 1;
    return state;
  }

  private static void limb(
      TreeState state, int limb, double heightM, double azimuthRad, double dbhM, double vigour) {
    Limbs limbs = state.limbs;
    limbs.status[limb] = LimbStatus.ALIVE.code();
    limbs.heightM[limb] = heightM;
    limbs.azimuthRad[limb] = azimuthRad % (2 * Math.PI);
    limbs.insertionRad[limb] = Math.toRadians(50 + 30 * vigour);
    limbs.baseDiameterM[limb] = dbhM * (0.08 + 0.15 * vigour);
    limbs.lengthM[limb] = 12 * dbhM * (0.2 + 0.8 * vigour);
    limbs.crownShareM[limb] = 0.3;
    limbs.birthYear[limb] = -20;
    limbs.woodKgC[limb] =
        30 * limbs.baseDiameterM[limb] * limbs.baseDiameterM[limb] * limbs.lengthM[limb];
    state.sprouts.budBank[limb] = 30;
    for (int z = 0; z < Limbs.ZONES; z++) {
      int zone = limb * Limbs.ZONES + z;
      double full = (z + 1) * 40 * dbhM * (0.1 + vigour) / 6;
      limbs.fullLeafAreaM2[zone] = full;
      limbs.budFullness[zone] = 0.9;
      limbs.leafAreaM2[zone] = 0.9 * full;
      limbs.leafKgC[zone] = 0.9 * full * 0.035;
    }
  }

  static void sprouts(TreeState state, int cohort, Random r) {
    Sprouts s = state.sprouts;
    s.count[cohort] = 0.3 + 25 * r.nextDouble();
    s.lengthM[cohort] = 0.2 + 2 * r.nextDouble();
    s.leafAreaM2[cohort] = s.count[cohort] * s.lengthM[cohort] * 0.1;
    s.leafKgC[cohort] = s.leafAreaM2[cohort] * 0.035;
    s.woodKgC[cohort] = s.count[cohort] * s.lengthM[cohort] * 0.02;
    s.ageYears[cohort] = 1 + r.nextInt(5);
    s.position[cohort] = cohort < Limbs.MAX ? r.nextDouble() : 0;
    s.budBank[cohort] = 40 * r.nextDouble();
  }

  static YearContext context(TreeState state, String species, long seed) {
    RandomStream random = new RandomStream();
    random.start(seed, 0, state.year, VisitRunner.STREAM);
    YearContext context = new YearContext(state, new CarbonLedger(), new EventLog(true), random);
    context.parameters = parameters(species);
    context.month = Season.SUMMER.month();
    context.light.stale = false;
    context.ledger.open(state.totalKgC());
    return context;
  }

  static Visit visit(CutMix cuts, Operation... operations) {
    return new Visit(new Timing.Once(1), Season.SUMMER, List.of(operations), cuts);
  }

  /** Does the operations on the tree and returns their rows. */
  static List<VisitRow> perform(YearContext context, CutMix cuts, Operation... operations) {
    List<VisitRow> rows = new ArrayList<>();
    new VisitRunner().perform(visit(cuts, operations), context, PRICE, rows::add);
    return rows;
  }

  /** Does one operation on a lime and returns its row. */
  static VisitRow perform(TreeState state, CutMix cuts, Operation operation) {
    return perform(context(state, "tilia-cordata", 1), cuts, operation).get(0);
  }
}
