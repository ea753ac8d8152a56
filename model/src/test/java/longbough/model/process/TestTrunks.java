package longbough.model.process;

import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.pruning.Placement;
import longbough.model.random.RandomStream;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.source.ParameterTable;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/** Trees built by hand for the tests of the mechanical processes: invented, round numbers. */
final class TestTrunks {
  static final String WEAK = "aesculus-hippocastanum";
  static final String STRONG = "carpinus-betulus";
  static final String SPRUCE = "picea-abies";

  private TestTrunks() {}

  static ParameterTable table(String species) {
    return ParameterLibrary.general().with(SpeciesLibrary.load().get(species).numbers());
  }

  /** A year's context with parameters of a species and a tree of 40 cm and 14 m without limbs. */
  static YearContext of(String species) {
    return of(species, table(species));
  }

  static YearContext of(String species, ParameterTable table) {
    SpeciesTraits traits = SpeciesLibrary.load().get(species);
    YearContext context =
        new YearContext(
            new TreeState(), new CarbonLedger(), new EventLog(true), new RandomStream());
    context.parameters = ModelParameters.of(traits, table);
    context.site.gustTenYearMs = 30;
    context.site.gustFiftyYearMs = 36;
    context.site.windExposure = 1;
    context.month = 12;
    trunk(context.state, 0.2, 14);
    reserve(context.state, 0.7);
    return context;
  }

  static void trunk(TreeState state, double radiusM, double heightM) {
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
    trunk.ringMemoryM = 0.0035;
  }

  static void reserve(TreeState state, double fraction) {
    state.pools.reserveCeilingKgC = 20;
    state.pools.reserveKgC = 20 * fraction;
    state.pools.reserveFloorKgC = 2;
    state.pools.trunkSapwoodKgC = 100;
    state.pools.coarseRootKgC = 60;
  }

  /**
   * Twenty alternate limbs between 4 and 13 m, leaves in proportion to the base's section, evenly
   * spread.
   */
  static void limbs(TreeState state) {
    Limbs limbs = state.limbs;
    limbs.count = 20;
    for (int limb = 0; limb < limbs.count; limb++) {
      limbs.clear(limb);
      limbs.status[limb] = LimbStatus.ALIVE.code();
      limbs.heightM[limb] = 4 + 9.0 * limb / limbs.count;
      limbs.azimuthRad[limb] = 2.4 * limb % (2 * Math.PI);
      limbs.insertionRad[limb] = 1;
      limbs.lengthM[limb] = 5 - 0.2 * limb;
      limbs.baseDiameterM[limb] = 0.12 - 0.004 * limb;
      limbs.birthYear[limb] = -30;
      limbs.woodKgC[limb] = 5;
      for (int zone = 0; zone < Limbs.ZONES; zone++) {
        limbs.leafAreaM2[limb * Limbs.ZONES + zone] =
            250 * limbs.baseDiameterM[limb] * limbs.baseDiameterM[limb];
        limbs.leafKgC[limb * Limbs.ZONES + zone] = 0.1;
      }
    }
  }

  /** A round cut on the trunk at 2.25 m, made in spring of year 0. */
  static int cut(YearContext context, Placement placement, double diameterM) {
    Wounds wounds = context.state.wounds;
    int w = wounds.add();
    double face = placement == Placement.FLUSH ? 1.4 * diameterM : 1.05 * diameterM;
    wounds.month[w] = 5;
    wounds.year[w] = context.state.year;
    wounds.placement[w] = (byte) placement.ordinal();
    wounds.heightM[w] = 2.25;
    wounds.azimuthRad[w] = 1;
    wounds.cutDiameterM[w] = diameterM;
    wounds.faceWidthM[w] = face;
    wounds.faceHeightM[w] = face;
    wounds.openWidthM[w] = face;
    wounds.openHeightM[w] = face;
    wounds.stubM[w] = placement == Placement.STUB ? 0.15 : 0;
    wounds.parentRadiusM[w] = context.state.trunk.radiusAtM(2.25);
    return w;
  }

  /** A wide wound without a branch, e.g. torn bark. */
  static int barkWound(YearContext context, double widthM) {
    int w = cut(context, Placement.COLLAR, widthM);
    Wounds wounds = context.state.wounds;
    wounds.cutDiameterM[w] = 0;
    wounds.faceWidthM[w] = widthM;
    wounds.faceHeightM[w] = widthM;
    wounds.openWidthM[w] = widthM;
    wounds.openHeightM[w] = widthM;
    return w;
  }

  /** Adds one ring of wood to the whole trunk. */
  static void ring(TreeState state, double ringM) {
    Trunk trunk = state.trunk;
    for (int s = 0; s < trunk.stations; s++) {
      trunk.radiusM[s] += ringM;
    }
    trunk.ringRadiusM[trunk.rings] = trunk.ringRadiusM[trunk.rings - 1] + ringM;
    trunk.rings++;
  }

  /** Grows a ring and runs closure, decay, sections and strength, a number of years. */
  static void years(YearContext context, int years, double ringM) {
    WoundClosure closure = new WoundClosure();
    Compartmentalization decay = new Compartmentalization();
    TrunkSections sections = new TrunkSections();
    TrunkStrength strength = new TrunkStrength();
    for (int year = 0; year < years; year++) {
      ring(context.state, ringM);
      closure.run(context);
      decay.run(context);
      sections.run(context);
      strength.run(context);
      context.state.year++;
    }
  }

  /** Wind load, critical gusts and probabilities of the tree as it stands. */
  static void wind(YearContext context) {
    new WindLoading().run(context);
    new TrunkResistance().run(context);
    new LimbResistance().run(context);
    new FailureProbability().run(context);
  }
}
