package longbough.runner.drawing;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Sections;
import longbough.model.state.Sprouts;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;
import longbough.runner.drawing.look.FoliageLook;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.YearState;

/** Invented trees to draw: healthy, topped, lion-tailed, over-thinned, decayed, dead, bare. */
public final class DrawingFixtures {
  public static final SpeciesLook LIME =
      new SpeciesLook("small-leaved lime", FoliageLook.LEAVES, false, 0.5);
  public static final SpeciesLook SPRUCE =
      new SpeciesLook("Norway spruce", FoliageLook.SPRAYS, true, 0.95);
  public static final SpeciesLook PINE =
      new SpeciesLook("Scots pine", FoliageLook.TUFTS, true, 0.7);
  public static final SpeciesLook CYPRESS =
      new SpeciesLook("Lawson cypress", FoliageLook.FANS, true, 0.95);

  private static final double GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

  private DrawingFixtures() {}

  /** A broadleaf of the given height with a rounded crown. */
  public static TreeState lime(int year, double heightM) {
    TreeState state = trunk(year, heightM, 0.016 * heightM);
    crown(state, 33, 2.6, 0.33 * heightM, 0.4, 0.5, Math.toRadians(48));
    return state;
  }

  /** A conifer of the given height with a conical crown. */
  public static TreeState spruce(int year, double heightM, double coneM) {
    TreeState state = trunk(year, heightM, 0.0125 * heightM);
    crown(state, 44, 1.4, coneM, 0.1, 0.85, Math.toRadians(82));
    return state;
  }

  /** Limbs evenly up the crown at the golden angle, each reaching to a rounded outline. */
  private static void crown(
      TreeState state,
      int limbs,
      double baseM,
      double radiusM,
      double widest,
      double exponent,
      double insertion) {
    double crown = state.trunk.heightM - baseM;
    for (int limb = 0; limb < limbs; limb++) {
      double u = limb / (double) limbs;
      double away = Math.abs(u - widest) / Math.max(widest, 1 - widest);
      double reach = radiusM * (0.08 + 0.92 * Math.pow(Math.max(0, 1 - away), exponent));
      double angle = Math.min(Math.PI / 2, insertion * (1.2 - 0.4 * u));
      double rise = Math.max(0, Math.min(reach / Math.tan(angle), crown * (1 - u)));
      double length = Math.sqrt(reach * reach + rise * rise);
      limb(state, limb, baseM + crown * u, length, Math.atan2(reach, rise), 1.9);
      state.limbs.crownShareM[limb] = crown / limbs;
    }
  }

  public static List<YearState> healthyLime() {
    return series(year -> lime(year, 12 + 0.13 * year));
  }

  /** Topped in year 1: few shortened limbs, many sprouts, decay below the cut. */
  public static List<YearState> toppedLime() {
    return series(
        year -> {
          TreeState state = lime(year, 12 + (year == 0 ? 0 : 0.3));
          return year == 0 ? state : topped(state, year);
        });
  }

  /** Every visit strips the inner two thirds of each limb. */
  public static List<YearState> lionTailedLime() {
    return series(
        year -> {
          TreeState state = lime(year, 12 + 0.1 * year);
          for (int zone = 0; year > 0 && zone < state.limbs.count * Limbs.ZONES; zone++) {
            double keep = zone % Limbs.ZONES == Limbs.OUTER ? 1 : zone % 3 == 0 ? 0.02 : 0.12;
            cutFoliage(state, zone, keep);
          }
          for (int limb = 0; year > 0 && limb < state.limbs.count; limb += 2) {
            sprouts(state, limb, 4, 0.5 + 0.01 * year, 0.3, 0.8);
          }
          return state;
        });
  }

  /** Six tenths taken at once; then slow recovery, or death by year 30. */
  public static List<YearState> overThinnedSpruce() {
    return series(
        year -> {
          TreeState state = spruce(year, 16 + 0.06 * year, 3.4);
          double keep = year == 0 ? 1 : year < 10 ? 0.3 : 0.2;
          for (int zone = 0; zone < state.limbs.count * Limbs.ZONES; zone++) {
            cutFoliage(state, zone, keep);
          }
          for (int limb = 0; year >= 15 && limb < 14; limb++) {
            kill(state, limb);
          }
          if (year >= 30) {
            die(state, CauseOfDeath.DROUGHT, 22);
          }
          return state;
        });
  }

  /** Old wounds and flush cuts with long columns of decay. */
  public static List<YearState> decayedLime() {
    return series(
        year -> {
          TreeState state = lime(year, 12 + 0.1 * year);
          double age = year + 4.0;
          wound(state, -6, 1.6, Math.PI * 1.05, 0.22, age);
          wound(state, -4, 4.2, Math.PI * 0.55, 0.16, age);
          wound(state, -2, 2.7, Math.PI * 1.6, 0.12, age);
          wound(state, 1, 6.0, Math.PI * 0.95, 0.05, year);
          fillSections(state);
          kill(state, 3);
          kill(state, 7);
          return state;
        });
  }

  /** A trunk without a single limb. */
  public static TreeState limbless() {
    return trunk(3, 6, 0.15);
  }

  /** What stands of nothing at all. */
  public static TreeState empty() {
    return new TreeState();
  }

  private interface Maker {
    TreeState at(int year);
  }

  private static List<YearState> series(Maker maker) {
    List<YearState> years = new ArrayList<>();
    for (int year : new int[] {0, 5, 15, 30}) {
      years.add(new YearState(year, maker.at(year)));
    }
    return years;
  }

  static TreeState trunk(int year, double heightM, double footRadiusM) {
    TreeState state = new TreeState();
    state.year = year;
    Trunk trunk = state.trunk;
    trunk.heightM = heightM;
    trunk.leaderIntact = true;
    trunk.sapwoodShare = 0.6;
    trunk.stations = Math.min(Trunk.MAX_STATIONS, (int) (heightM / Trunk.STATION_STEP_M) + 1);
    for (int station = 0; station < trunk.stations; station++) {
      double share = station * Trunk.STATION_STEP_M / heightM;
      trunk.radiusM[station] =
          footRadiusM * (1 - 0.85 * share) * (1 + 0.15 * Math.exp(-station)) + 0.0012 * year;
    }
    trunk.rings = year + 1;
    double now = trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    for (int ring = 0; ring <= year; ring++) {
      trunk.ringRadiusM[ring] = now * (0.72 + 0.28 * ring / Math.max(1, year));
    }
    state.vitality.worstStation = Math.min(trunk.stations - 1, 4);
    java.util.Arrays.fill(state.sections.wallRatio, 1);
    return state;
  }

  static void limb(
      TreeState state, int limb, double heightM, double lengthM, double insertion, double leaf) {
    Limbs limbs = state.limbs;
    limbs.count = Math.max(limbs.count, limb + 1);
    limbs.status[limb] = LimbStatus.ALIVE.code();
    limbs.heightM[limb] = heightM;
    limbs.azimuthRad[limb] = (limb * GOLDEN_ANGLE) % (2 * Math.PI);
    limbs.insertionRad[limb] = insertion;
    limbs.lengthM[limb] = lengthM;
    limbs.baseDiameterM[limb] = 0.026 * lengthM + 0.01;
    limbs.crownShareM[limb] = 0.35;
    for (int zone = 0; zone < Limbs.ZONES; zone++) {
      int at = limb * Limbs.ZONES + zone;
      limbs.fullLeafAreaM2[at] = leaf * lengthM * (0.45 + 0.25 * zone);
      limbs.leafAreaM2[at] = limbs.fullLeafAreaM2[at];
      limbs.budFullness[at] = 1;
    }
  }

  private static TreeState topped(TreeState state, int year) {
    double cut = 7.5;
    Trunk trunk = state.trunk;
    trunk.heightM = cut;
    trunk.toppedAtM = cut;
    trunk.leaderIntact = false;
    trunk.stations = (int) (cut / Trunk.STATION_STEP_M) + 1;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.heightM[limb] >= cut - 0.2) {
        limbs.clear(limb);
        continue;
      }
      double room = (cut + 0.8 - limbs.heightM[limb]) / Math.cos(limbs.insertionRad[limb]);
      if (room < limbs.lengthM[limb]) {
        limbs.lengthM[limb] = Math.max(0.6, 0.75 * room);
        limbs.tip[limb] = TipState.HEADED.code();
        for (int zone = 0; zone < Limbs.ZONES; zone++) {
          cutFoliage(state, limb * Limbs.ZONES + zone, zone == 0 ? 0.6 : 0.1);
        }
        sprouts(state, limb, 6 + year / 4.0, 0.9 + 0.09 * year, 0.92, 2.2 + 0.25 * year);
      }
    }
    sprouts(state, Sprouts.trunkCohort(cut - 0.5), 12, 1 + 0.09 * year, 0, 3 + 0.3 * year);
    int wound = wound(state, 1, cut, 0, 0.3, year);
    state.wounds.acrossStem[wound] = true;
    state.wounds.columnDownM[wound] = 0.4 + 0.09 * year;
    fillSections(state);
    state.vitality.worstStation = trunk.stations - 2;
    return state;
  }

  static void sprouts(
      TreeState state, int cohort, double count, double length, double position, double leaf) {
    state.sprouts.count[cohort] = count;
    state.sprouts.lengthM[cohort] = length;
    state.sprouts.position[cohort] = position;
    state.sprouts.leafAreaM2[cohort] = leaf;
  }

  private static void cutFoliage(TreeState state, int zone, double keep) {
    state.limbs.leafAreaM2[zone] *= keep;
    state.limbs.budFullness[zone] *= keep;
  }

  static void kill(TreeState state, int limb) {
    state.limbs.clearFoliage(limb);
    state.limbs.status[limb] = LimbStatus.DEAD.code();
  }

  static void die(TreeState state, CauseOfDeath cause, int year) {
    state.vitality.alive = false;
    state.vitality.cause = cause;
    state.vitality.deathYear = year;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      state.limbs.clearFoliage(limb);
    }
  }

  static int wound(
      TreeState state, int year, double heightM, double azimuth, double widthM, double age) {
    Wounds wounds = state.wounds;
    int wound = wounds.add();
    wounds.year[wound] = year;
    wounds.heightM[wound] = heightM;
    wounds.azimuthRad[wound] = azimuth;
    wounds.cutDiameterM[wound] = widthM;
    wounds.faceWidthM[wound] = widthM;
    wounds.faceHeightM[wound] = 1.2 * widthM;
    double closed = Math.min(1, 0.006 * age / widthM);
    wounds.openWidthM[wound] = widthM * (1 - closed);
    wounds.openHeightM[wound] = 1.2 * widthM * (1 - closed);
    if (closed >= 1) {
      wounds.closedYear[wound] = state.year;
    }
    double radius = state.trunk.radiusAtM(heightM);
    wounds.parentRadiusM[wound] = Math.max(0.02, radius - 0.0022 * age);
    wounds.columnUpM[wound] = widthM * (1 + 0.12 * age);
    wounds.columnDownM[wound] = widthM * (1 + 0.1 * age);
    wounds.columnDepthM[wound] =
        Math.min(0.9 * wounds.parentRadiusM[wound], widthM * (0.3 + 0.02 * age));
    wounds.columnHalfWidthM[wound] = widthM * (0.5 + 0.008 * (age - 3));
    return wound;
  }

  /** Fills the polar grid from the wounds, each a wedge that narrows away from its wound. */
  private static void fillSections(TreeState state) {
    for (int station = 0; station < state.trunk.stations; station++) {
      for (int wound = 0; wound < state.wounds.count; wound++) {
        fillStation(state, station, wound);
      }
      measure(state, station);
    }
    double loss = -1;
    for (int station = 0; station < state.trunk.stations; station++) {
      if (state.sections.strengthLoss[station] > loss) {
        loss = state.sections.strengthLoss[station];
        state.vitality.worstStation = station;
      }
    }
    int worst = state.vitality.worstStation;
    state.vitality.worstStrengthLoss = state.sections.strengthLoss[worst];
    state.vitality.worstWallRatio = state.sections.wallRatio[worst];
    state.vitality.worstDecayAreaFraction = state.sections.areaFraction[worst];
  }

  private static void fillStation(TreeState state, int station, int wound) {
    Wounds wounds = state.wounds;
    double away = station * Trunk.STATION_STEP_M - wounds.heightM[wound];
    double reach = away > 0 ? wounds.columnUpM[wound] : wounds.columnDownM[wound];
    double share = reach <= 0 ? 0 : 1 - Math.abs(away) / reach;
    if (share <= 0) {
      return;
    }
    double bound = Math.min(wounds.parentRadiusM[wound], state.trunk.radiusM[station]);
    double depth = Math.min(bound, wounds.columnDepthM[wound] * Math.sqrt(share));
    double halfAngle = wounds.columnHalfWidthM[wound] / bound;
    for (int sector = 0; sector < Sections.SECTORS; sector++) {
      double turn = 2 * Math.PI * sector / Sections.SECTORS - wounds.azimuthRad[wound];
      if (Math.abs(Math.IEEEremainder(turn, 2 * Math.PI)) < halfAngle + 0.2) {
        state.sections.decay(station, sector, Math.max(0, bound - depth), bound);
        boolean near = Math.abs(away) <= wounds.openHeightM[wound] / 2 + 0.1;
        boolean faces = Math.abs(Math.IEEEremainder(turn, 2 * Math.PI)) < 0.3;
        if (near && faces && wounds.open(wound)) {
          state.sections.open(station, sector, bound);
        }
      }
    }
  }

  private static void measure(TreeState state, int station) {
    double radius = state.trunk.radiusM[station];
    double area = 0;
    double wall = radius;
    for (int sector = 0; sector < Sections.SECTORS; sector++) {
      int at = station * Sections.SECTORS + sector;
      double inner = state.sections.holes.innermostM(at);
      double outer = state.sections.holes.outermostM(at);
      area += (outer * outer - inner * inner) / Sections.SECTORS;
      wall = Math.min(wall, state.sections.holes.soundM(at, radius));
    }
    state.sections.areaFraction[station] = radius > 0 ? area / (radius * radius) : 0;
    state.sections.wallRatio[station] = radius > 0 ? wall / radius : 1;
    state.sections.strengthLoss[station] = Math.min(1, 1.4 * state.sections.areaFraction[station]);
  }
}
