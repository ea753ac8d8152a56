package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.CrownFrame;
import longbough.model.state.Limbs;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.geometry.Allometry;
import longbough.model.geometry.CrownShape;

/**
 * Growth in height and in limb length, before the rings.
 *
 * <pre>
 * dH = [Ha(d + 2 m) - Ha(d)] hf v (Ht / H)^2,   Ht = Ha(d) hf
 * dl = min(max v tip, target length - l, sl d - l)
 * wood of dl = form A dl,  wood of dH = thin cone
 * </pre>
 *
 * Ha height by allometry (m) at trunk diameter d (m); m habit of radial growth (m/year, memory of some
 * ten years, so that height holds on when rings narrow); hf this tree's height over allometry; v vigour
 * from the reserve; target length from the crown's shape and allometric spread, no longer than sl times
 * the base diameter; tip 1 intact, less where headed; A
 * base area (m2). All of it takes at most a share of the growth budget. A trunk without its leader does
 * not grow in height. Source: priority of shoots over rings, Larson 1963 (from memory); allometry see
 * {@link Allometry}.
 */
public final class Extension implements Process {
  private static final double LEAST_RADIUS_M = 0.008;

  private final CrownGrid grid = new CrownGrid();
  private final double[] wantedM = new double[Limbs.MAX];

  @Override
  public String name() {
    return "extension";
  }

  @Override
  public List<String> sources() {
    return List.of("larson1963", "mcpherson2016");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.TRUNK, StatePart.LIMBS, StatePart.POOLS, StatePart.FOLIAGE, StatePart.SPROUTS);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    ModelParameters p = context.parameters;
    double vigour = Vigour.of(state, p);
    double density = p.species().woodDensityKgM3() * p.carbon().woodCarbon();
    double heightGain = state.trunk.leaderIntact ? heightGainM(state, p, vigour) : 0;
    double cost = density * Math.PI * LEAST_RADIUS_M * LEAST_RADIUS_M * heightGain;
    cost += density * wanted(state, p, vigour);
    double able =
        Spending.structureFor(context, p.allocation().extensionShare() * state.pools.growthBudgetKgC);
    double met = cost > able ? able / cost : 1;
    if (cost <= 0 || met <= 0) {
      return;
    }
    double built = rise(state, density, heightGain * met) + lengthen(state, p.allocation(), density, met);
    Spending.fromBudget(context, built);
    if (state.trunk.leaderIntact) {
      NewLimbs.add(context);
    }
  }

  private static double heightGainM(TreeState state, ModelParameters p, double vigour) {
    SpeciesParameters s = p.species();
    double dbh = state.trunk.dbhM();
    double now = Allometry.heightM(s, dbh);
    double next = Allometry.heightM(s, dbh + 2 * state.trunk.ringMemoryM);
    double ratio = now * state.frame.heightFactor / state.trunk.heightM;
    double catchUp = Math.min(2, Math.max(0.25, ratio * ratio));
    double room = (Trunk.MAX_STATIONS - 2) * Trunk.STATION_STEP_M - state.trunk.heightM;
    return Math.max(0, Math.min(room, (next - now) * state.frame.heightFactor * vigour * catchUp));
  }

  /** Fills the wanted length of each limb; returns the wood volume it takes, m3. */
  private double wanted(TreeState state, ModelParameters p, double vigour) {
    Limbs limbs = state.limbs;
    AllocationParameters a = p.allocation();
    double radius = Allometry.crownDiameterM(p.species(), state.trunk.dbhM()) / 2;
    double volume = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      wantedM[limb] = 0;
      if (limbs.alive(limb)) {
        double sin = grid.sin(state, limb);
        double target = targetLengthM(state, p.species(), limb, radius, sin, grid.cos(state, limb));
        double leaf = limbs.leafAreaM2(limb);
        double full = fullM2(limbs, limb);
        double well = full > 0 ? Math.min(1, leaf / full) : 0;
        double tip = limbs.tip[limb] == TipState.HEADED.code() ? a.headedExtension() : 1;
        double d = limbs.baseDiameterM[limb];
        double most = a.extensionMaxM() * vigour * well * tip;
        double bearable = Math.min(target, a.slendernessMax() * d);
        wantedM[limb] = Math.min(most, Math.max(0, bearable - limbs.lengthM[limb]));
        volume += a.limbForm() * Math.PI / 4 * d * d * wantedM[limb];
      }
    }
    return volume;
  }

  private static double fullM2(Limbs limbs, int limb) {
    int zone = limb * Limbs.ZONES;
    return limbs.fullLeafAreaM2[zone] + limbs.fullLeafAreaM2[zone + 1] + limbs.fullLeafAreaM2[zone + 2];
  }

  private static double targetLengthM(
      TreeState state, SpeciesParameters s, int limb, double radiusM, double sin, double cos) {
    CrownFrame frame = state.frame;
    double top = state.trunk.heightM;
    double height = state.limbs.heightM[limb];
    double share = CrownShape.radiusShare(s, frame.crownBaseM, top, height);
    double reach = radiusM * share * frame.spreadFactorAt(state.limbs.azimuthRad[limb]);
    double length = reach / Math.max(0.1, sin);
    return Math.min(length, (top - height) / Math.max(0.1, cos));
  }

  private static double rise(TreeState state, double density, double gainM) {
    Trunk trunk = state.trunk;
    trunk.heightM += gainM;
    double built = 0;
    while ((trunk.stations) * Trunk.STATION_STEP_M <= trunk.heightM) {
      trunk.radiusM[trunk.stations++] = LEAST_RADIUS_M;
      built += density * Math.PI * LEAST_RADIUS_M * LEAST_RADIUS_M * Trunk.STATION_STEP_M;
    }
    state.pools.trunkSapwoodKgC += built;
    return built;
  }

  private double lengthen(TreeState state, AllocationParameters a, double density, double met) {
    Limbs limbs = state.limbs;
    double built = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (wantedM[limb] > 0) {
        double gain = wantedM[limb] * met;
        double d = limbs.baseDiameterM[limb];
        double wood = density * a.limbForm() * Math.PI / 4 * d * d * gain;
        limbs.lengthM[limb] += gain;
        limbs.woodKgC[limb] += wood;
        built += wood;
      }
    }
    return built;
  }
}
