package longbough.runner.validate.lab;

import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.process.Compartmentalization;
import longbough.model.process.Shedding;
import longbough.model.process.TrunkSections;
import longbough.model.process.TrunkStrength;
import longbough.model.process.WoundClosure;
import longbough.model.process.YearContext;
import longbough.model.pruning.Placement;
import longbough.model.random.RandomStream;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;
import longbough.model.surgery.SapwoodRim;
import longbough.model.surgery.WoundOpener;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * A bare trunk of a species with rings of a chosen width: wounds close, decay and weaken it as in
 * the model, while nothing else goes on. At the start 40 cm thick and 14 m high, sapwood 0.6 of the
 * radius, reserve 0.7 of its ceiling.
 */
public final class TrunkBench {
  /** Height of the wounds, m. */
  public static final double WOUND_M = 2.25;

  private static final double CEILING_KG_C = 20;
  private static final double FLOOR_KG_C = 2;
  private static final double STUB_M = 0.15;
  private static final double BRANCH_M = 2;
  private static final int SPRING = 5;
  private static final double START_RING_M = 0.0035;

  public final YearContext context;
  public final Wounds wounds;
  private final WoundClosure closure = new WoundClosure();
  private final Compartmentalization decay = new Compartmentalization();
  private final TrunkSections sections = new TrunkSections();
  private final TrunkStrength strength = new TrunkStrength();

  private TrunkBench(YearContext context) {
    this.context = context;
    this.wounds = context.state.wounds;
  }

  public static TrunkBench of(String species) {
    return of(species, 0.4, 14);
  }

  public static TrunkBench of(String species, double dbhM, double heightM) {
    SpeciesTraits traits = SpeciesLibrary.load().get(species);
    YearContext context =
        new YearContext(
            new TreeState(), new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = ModelParameters.of(traits, GeneralNumbers.table().with(traits.numbers()));
    context.month = 12;
    trunk(context.state, dbhM / 2, heightM);
    TrunkBench bench = new TrunkBench(context);
    bench.reserve(0.7);
    return bench;
  }

  private static void trunk(TreeState state, double radiusM, double heightM) {
    Trunk trunk = state.trunk;
    trunk.heightM = heightM;
    trunk.leaderIntact = true;
    trunk.stations = (int) (heightM / Trunk.STATION_STEP_M);
    trunk.sapwoodShare = 0.6;
    for (int s = 0; s < trunk.stations; s++) {
      double left = (heightM - s * Trunk.STATION_STEP_M) / (heightM - Trunk.BREAST_HEIGHT_M);
      trunk.radiusM[s] = radiusM * left;
    }
    trunk.rings = 1;
    trunk.ringRadiusM[0] = trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    trunk.ringMemoryM = START_RING_M;
  }

  /** Sets the reserve over its ceiling. */
  public TrunkBench reserve(double fraction) {
    context.state.pools.reserveCeilingKgC = CEILING_KG_C;
    context.state.pools.reserveKgC = CEILING_KG_C * fraction;
    context.state.pools.reserveFloorKgC = FLOOR_KG_C;
    return this;
  }

  /** A branch cut off the trunk in spring of the year at hand; returns its record. */
  public int cut(Placement placement, double diameterM) {
    int w =
        wound(
            WoundOpener.faceWidthM(context.parameters.pruning(), placement, diameterM),
            WoundOpener.faceHeightM(context.parameters.pruning(), placement, diameterM));
    wounds.placement[w] = (byte) placement.ordinal();
    wounds.cutDiameterM[w] = diameterM;
    wounds.heartwood[w] = SapwoodRim.reachesHeartwood(context.state.trunk, diameterM / 2);
    wounds.stubM[w] = placement == Placement.STUB ? stubM(diameterM, false, 0) : 0;
    return w;
  }

  /** A stub left of a branch that died this long of trunk growth ago (radius, m); its record. */
  public int deadStub(double diameterM, double sleeveM) {
    int w = cut(Placement.STUB, diameterM);
    wounds.stubM[w] = stubM(diameterM, true, sleeveM);
    wounds.parentRadiusM[w] -= sleeveM;
    return w;
  }

  private double stubM(double diameterM, boolean dead, double sleeveM) {
    return WoundOpener.stubToOvergrowM(
        context.parameters.pruning(), STUB_M, diameterM, dead, sleeveM);
  }

  /** A branch that dies now and stays on; returns its place. */
  public int deadBranch(double diameterM) {
    Limbs limbs = context.state.limbs;
    int limb = limbs.count++;
    limbs.clear(limb);
    limbs.status[limb] = LimbStatus.DEAD.code();
    limbs.heightM[limb] = WOUND_M;
    limbs.azimuthRad[limb] = 1;
    limbs.baseDiameterM[limb] = diameterM;
    limbs.lengthM[limb] = BRANCH_M;
    limbs.deathYear[limb] = context.state.year;
    return limb;
  }

  /** Waits, without growth, until a dead branch is shed; returns the record of its wound. */
  public int shed(int limb) {
    Shedding shedding = new Shedding();
    context.ledger.open(0);
    for (int turn = 0; context.state.limbs.status[limb] != LimbStatus.EMPTY.code(); turn++) {
      context.random.start(1, turn, context.state.year, shedding.name());
      shedding.run(context);
    }
    return wounds.count - 1;
  }

  /** A round wound without a branch, e.g. torn bark; returns its record. */
  public int barkWound(double widthM) {
    return wound(widthM, widthM);
  }

  private int wound(double widthM, double heightM) {
    int w = wounds.add();
    wounds.month[w] = SPRING;
    wounds.year[w] = context.state.year;
    wounds.placement[w] = (byte) Placement.COLLAR.ordinal();
    wounds.heightM[w] = WOUND_M;
    wounds.azimuthRad[w] = 1;
    wounds.faceWidthM[w] = widthM;
    wounds.faceHeightM[w] = heightM;
    wounds.openWidthM[w] = widthM;
    wounds.openHeightM[w] = heightM;
    wounds.parentRadiusM[w] = context.state.trunk.radiusAtM(WOUND_M);
    return w;
  }

  /** Grows a ring and runs closure, decay, sections and strength, a number of years. */
  public TrunkBench years(int years, double ringM) {
    for (int year = 0; year < years; year++) {
      ring(ringM);
      closure.run(context);
      decay.run(context);
      sections.run(context);
      strength.run(context);
      context.state.year++;
    }
    return this;
  }

  private void ring(double ringM) {
    Trunk trunk = context.state.trunk;
    for (int s = 0; s < trunk.stations; s++) {
      trunk.radiusM[s] += ringM;
    }
    trunk.ringRadiusM[trunk.rings] = trunk.ringRadiusM[trunk.rings - 1] + ringM;
    trunk.rings++;
  }

  /** Years until a wound has closed, at most 200. */
  public int yearsToClose(int w, double ringM) {
    int years = 0;
    while (wounds.open(w) && years < 200) {
      years(1, ringM);
      years++;
    }
    return years;
  }

  /** Length of a wound's column, m. */
  public double columnM(int w) {
    return wounds.columnUpM[w] + wounds.columnDownM[w];
  }

  /** Decayed area at a station, m2. */
  public double decayedM2(int station) {
    double radius = context.state.trunk.radiusM[station];
    return context.state.sections.areaFraction[station] * Math.PI * radius * radius;
  }

  /** Decayed wood of the trunk, m3. */
  public double decayedM3() {
    double sum = 0;
    for (int s = 0; s < context.state.trunk.stations; s++) {
      sum += decayedM2(s) * Trunk.STATION_STEP_M;
    }
    return sum;
  }
}
