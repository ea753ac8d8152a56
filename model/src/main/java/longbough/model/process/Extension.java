package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.geometry.Allometry;
import longbough.model.geometry.CrownShape;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.CrownFrame;
import longbough.model.state.Limbs;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Growth in height and in limb length, before the rings.
 *
 * <pre>
 * dH = [Ha(dl + 2 (1 + (g - 1) b) m) - Ha(dl)] hf v (Ht / H)^2,   Ht = Ha(dl) hf
 * dl = min(max v tip, target length - l)
 * wood = form tw A dl,   leader: dr <= dH / (2 sl) up to (H - z) / (2 sl),   sl = max(s0, H / d)
 * </pre>
 *
 * Ha height by allometry (m) at the trunk diameter dl that goes with the leader (m); m the ring
 * width with which shoots keep pace (m/year), g the leader's pace over theirs and b how far the
 * stem can still outgrow its thickness ({@link Slenderness}), m and g from {@link Stature}; hf this
 * tree's height over allometry; v vigour from the reserve; target length from the crown's shape and
 * allometric spread; sl slenderness that a leader can bear: s0 in the open, or that of the stem as
 * it stands; tw wood of a new shoot over base area times its length, since its end is thin; tip 1
 * intact, less where headed; A base area (m2). A limb that has grown longer is bent harder by the
 * wind and thickens for it with the rings ({@link RadialGrowth}). Shoots take at most a share of
 * the growth budget, the leader first. A trunk without its leader does not grow in height. Source:
 * priority of shoots over rings, Larson 1963 (from memory); allometry see {@link Allometry}.
 */
public final class Extension implements Process {
  private static final double LEAST_RADIUS_M = 0.008;

  private final LimbAngles angles = new LimbAngles();
  private final double[] wantedM = new double[Limbs.MAX];

  @Override
  public String name() {
    return "extension";
  }

  @Override
  public List<String> sources() {
    return List.of("larson1963", "urbantrees2016");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(
        StatePart.TRUNK, StatePart.LIMBS, StatePart.POOLS, StatePart.FOLIAGE, StatePart.SPROUTS);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    ModelParameters p = context.parameters;
    double vigour = Vigour.of(state, p);
    double density = p.species().woodDensityKgM3() * p.carbon().woodCarbon();
    double heightGain = state.trunk.leaderIntact ? heightGainM(state, p, vigour) : 0;
    double wanted = density * wantedM3(state, p, vigour);
    double able =
        p.allocation().extensionShare()
            * Spending.structureFor(context, state.pools.growthBudgetKgC);
    double leader =
        lead(
            state, slenderness(state.trunk, p.allocation(), heightGain), density, heightGain, able);
    double met = wanted > able - leader ? (able - leader) / wanted : 1;
    double built = leader + (met > 0 ? lengthen(state, p.allocation(), density, met) : 0);
    Spending.fromBudget(context, built);
    if (state.trunk.leaderIntact) {
      NewLimbs.add(context);
    }
  }

  /**
   * Grows the leader as far as the budget goes; returns the carbon built in. A new station comes
   * whole, so a tiny budget may not reach: then the leader waits for next year.
   */
  private static double lead(
      TreeState state, double slenderness, double density, double gainM, double ableKgC) {
    double wanted = density * leaderVolumeM3(state.trunk, gainM, slenderness);
    double rise = wanted > ableKgC ? gainM * ableKgC / wanted : gainM;
    double cost = rise < gainM ? density * leaderVolumeM3(state.trunk, rise, slenderness) : wanted;
    if (rise <= 0 || cost > ableKgC) {
      return 0;
    }
    rise(state, slenderness, rise);
    state.pools.trunkSapwoodKgC += cost;
    return cost;
  }

  /**
   * A stem that stands more slender than a leader in the open is not made stouter for its leader.
   */
  private static double slenderness(Trunk trunk, AllocationParameters a, double gainM) {
    return Math.max(a.slendernessMax(), (trunk.heightM + gainM) / trunk.dbhM());
  }

  private static double heightGainM(TreeState state, ModelParameters p, double vigour) {
    SpeciesParameters s = p.species();
    double d = state.trunk.leaderStatureM();
    double lead = (state.frame.leaderFactor - 1) * Slenderness.upright(p, state);
    double pace = (1 + lead) * state.trunk.shootPaceM;
    double now = Allometry.heightM(s, d);
    double next = Allometry.heightM(s, d + 2 * pace);
    double ratio = now * state.frame.heightFactor / state.trunk.heightM;
    double catchUp = Math.min(2, Math.max(0.25, ratio * ratio));
    double room = (Trunk.MAX_STATIONS - 2) * Trunk.STATION_STEP_M - state.trunk.heightM;
    return Math.max(0, Math.min(room, (next - now) * state.frame.heightFactor * vigour * catchUp));
  }

  /** Fills the wanted length of each limb; returns the volume of new shoots it takes, m3. */
  private double wantedM3(TreeState state, ModelParameters p, double vigour) {
    Limbs limbs = state.limbs;
    AllocationParameters a = p.allocation();
    double thicker = state.trunk.statureM() + 2 * state.trunk.shootPaceM;
    double radius = Allometry.crownDiameterM(p.species(), thicker) / 2;
    double volume = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      wantedM[limb] = 0;
      if (limbs.alive(limb)) {
        double sin = angles.sin(limbs, limb);
        double target =
            targetLengthM(state, p.species(), limb, radius, sin, angles.cos(limbs, limb));
        double leaf = limbs.leafAreaM2(limb);
        double full = fullM2(limbs, limb);
        double well = full > 0 ? Math.min(1, leaf / full) : 0;
        double tip = limbs.tip[limb] == TipState.HEADED.code() ? a.headedExtension() : 1;
        double d = limbs.baseDiameterM[limb];
        double most = a.extensionMaxM() * vigour * well * tip;
        wantedM[limb] = Math.min(most, Math.max(0, target - limbs.lengthM[limb]));
        volume += shootVolumeM3(a, d, wantedM[limb]);
      }
    }
    return volume;
  }

  private static double fullM2(Limbs limbs, int limb) {
    int zone = limb * Limbs.ZONES;
    return limbs.fullLeafAreaM2[zone]
        + limbs.fullLeafAreaM2[zone + 1]
        + limbs.fullLeafAreaM2[zone + 2];
  }

  private static double targetLengthM(
      TreeState state, SpeciesParameters s, int limb, double radiusM, double sin, double cos) {
    CrownFrame frame = state.frame;
    double top = state.trunk.heightM;
    double height = state.limbs.heightM[limb];
    double middle = height + CrownShape.FOLIAGE_MIDDLE * state.limbs.lengthM[limb] * cos;
    double share = CrownShape.radiusShare(s, frame.crownBaseM, top, middle);
    double reach = radiusM * share * frame.spreadFactorAt(state.limbs.azimuthRad[limb]);
    double length = reach / Math.max(0.1, sin);
    return Math.min(length, (top - height) / Math.max(0.1, cos));
  }

  /** Volume of a limb's new shoot, m3. */
  private static double shootVolumeM3(AllocationParameters a, double diameterM, double gainM) {
    return a.limbForm() * Math.PI / 4 * a.tipWoodShare() * diameterM * diameterM * gainM;
  }

  /**
   * Radius of the leader at a station after growth to a new top with at most so much in radius, m.
   */
  private static double leaderRadiusM(
      Trunk trunk, int station, double topM, double mostM, double slenderness) {
    if (station >= trunk.stations) {
      return LEAST_RADIUS_M;
    }
    double now = trunk.radiusM[station];
    double wanted = (topM - station * Trunk.STATION_STEP_M) / (2 * slenderness);
    return now + Math.min(mostM, Math.max(0, wanted - now));
  }

  /** Most radius that a growth in height brings along, m. */
  private static double leaderGainM(double gainM, double slenderness) {
    return gainM / (2 * slenderness);
  }

  /** Volume that the trunk gains by a growth in height, m3. */
  private static double leaderVolumeM3(Trunk trunk, double gainM, double slenderness) {
    if (gainM <= 0) {
      return 0;
    }
    double top = trunk.heightM + gainM;
    double most = leaderGainM(gainM, slenderness);
    double volume = 0;
    for (int station = (int) (top / Trunk.STATION_STEP_M); station >= 0; station--) {
      double now = station < trunk.stations ? trunk.radiusM[station] : 0;
      double then = leaderRadiusM(trunk, station, top, most, slenderness);
      volume += Math.PI * (then * then - now * now) * Trunk.STATION_STEP_M;
    }
    return volume;
  }

  private static void rise(TreeState state, double slenderness, double gainM) {
    Trunk trunk = state.trunk;
    double top = trunk.heightM + gainM;
    double most = leaderGainM(gainM, slenderness);
    int last = (int) (top / Trunk.STATION_STEP_M);
    for (int station = last; station >= 0; station--) {
      trunk.radiusM[station] = leaderRadiusM(trunk, station, top, most, slenderness);
    }
    trunk.stations = Math.max(trunk.stations, last + 1);
    trunk.heightM = top;
  }

  private double lengthen(TreeState state, AllocationParameters a, double density, double met) {
    Limbs limbs = state.limbs;
    double built = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (wantedM[limb] > 0) {
        double gain = wantedM[limb] * met;
        double wood = density * shootVolumeM3(a, limbs.baseDiameterM[limb], gain);
        limbs.lengthM[limb] += gain;
        limbs.woodKgC[limb] += wood;
        built += wood;
      }
    }
    return built;
  }
}
