package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.geometry.Allometry;

/**
 * How much leaf each zone would carry with full buds in its light, and the return of lost buds.
 *
 * <pre>
 * F* = D V q_z fit(E),   V = pi reach^2 share,   D = lf La(d) / (Ka(d)^2 Ha(d))
 * fit = min(1, max(0, (E - E0) / w)),   F' = F + c (F* - F)
 * b' = b + r v (1 - b)
 * </pre>
 *
 * V crown volume of the limb (m3) with the part q of its zone; D leaf area density (m2 m-3) from the
 * species' leaf area, crown diameter and height at diameter d, scaled by this tree's leaf factor lf; E
 * light share, E0 the share that repays a leaf, w span; so that crowns don't overshoot and later
 * collapse. b bud fullness, r return rate, v reserve over its set point. Neighbours slowly close a gap.
 * Source: allometry McPherson et al. 2016; the light rule is an assumption.
 */
public final class CrownPotential implements Process {
  /** Shares of a limb's crown volume by zone: rings between 0, 0.45, 0.75 and 1 of the reach. */
  private static final double[] ZONE_VOLUME = {0.2025, 0.36, 0.4375};

  private final CrownGrid grid = new CrownGrid();

  @Override
  public String name() {
    return "crown potential";
  }

  @Override
  public List<String> sources() {
    return List.of("mcpherson2016");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.LIMBS);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    ModelParameters p = context.parameters;
    fillGaps(state, p.allocation());
    double density = densityM2M3(state, p.species());
    follow(state, context.light, p, density, p.allocation().crownFollow());
    returnBuds(state, p);
    Limbs limbs = state.limbs;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      CrownLight light = context.light;
      int cell = light.zoneCell[zone];
      double cost = Foliage.leafKgCM2(p, light.capacityShare[cell]) / p.species().leafLifeYears();
      limbs.leafReturnKgCM2[zone] = light.returnKgCM2[cell] - cost * (1 + p.carbon().growthRespiration());
    }
  }

  private static double densityM2M3(TreeState state, SpeciesParameters s) {
    double dbh = state.trunk.dbhM();
    double diameter = Allometry.crownDiameterM(s, dbh);
    return state.frame.leafFactor * Allometry.leafAreaM2(s, dbh) / (diameter * diameter * Allometry.heightM(s, dbh));
  }

  /** Moves each zone's full leaf area towards what space and light support; pace 1 sets it at once. */
  private void follow(TreeState state, CrownLight light, ModelParameters p, double density, double pace) {
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        double reach = limbs.lengthM[limb] * grid.sin(state, limb);
        double volume = Math.PI * reach * reach * limbs.crownShareM[limb];
        for (int z = 0; z < Limbs.ZONES; z++) {
          int zone = limb * Limbs.ZONES + z;
          double room = density * volume * ZONE_VOLUME[z];
          double target = room * fit(p, light.lightShare[light.zoneCell[zone]]);
          double now = limbs.fullLeafAreaM2[zone];
          boolean young = state.year - limbs.birthYear[limb] < YOUNG_YEARS;
          double step = young ? Math.max(pace, YOUNG_PACE) : pace;
          limbs.fullLeafAreaM2[zone] = Math.min(room, now + step * (target - now));
        }
      }
    }
  }

  static double fit(ModelParameters p, double lightShare) {
    AllocationParameters a = p.allocation();
    double low = a.lightLow() + p.species().shadeTolerance() * (a.lightLowTolerant() - a.lightLow());
    return Math.min(1, Math.max(0, (lightShare - low) / a.lightSpan()));
  }

  private static void returnBuds(TreeState state, ModelParameters p) {
    AllocationParameters a = p.allocation();
    double vigour = Vigour.of(state, p);
    double rate = (p.species().conifer() ? a.budRecoveryConifer() : a.budRecovery()) * vigour;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
          limbs.budFullness[zone] += rate * (1 - limbs.budFullness[zone]);
        }
      }
    }
  }

  private static void fillGaps(TreeState state, AllocationParameters a) {
    Limbs limbs = state.limbs;
    double filled = 0;
    int living = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        filled += limbs.crownShareM[limb];
        living++;
      }
    }
    double gap = state.trunk.heightM - state.crownBaseM() - filled;
    if (living == 0 || gap <= 0) {
      return;
    }
    double growth = Math.min(a.gapFilling(), gap / filled);
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        limbs.crownShareM[limb] *= 1 + growth;
      }
    }
  }

  /**
   * Sets the full leaf area of every zone of an untouched crown so that it sums to a given leaf area,
   * with the leaf factor that goes with it. Light and leaf are made to agree by some rounds.
   */
  public static void settle(TreeState state, ModelParameters p, double openness, double leafAreaM2) {
    CrownPotential potential = new CrownPotential();
    LightInterception interception = new LightInterception();
    CrownLight light = new CrownLight();
    Limbs limbs = state.limbs;
    state.frame.leafFactor = 1;
    java.util.Arrays.fill(light.lightShare, 1);
    potential.follow(state, light, p, densityM2M3(state, p.species()), 1);
    for (int round = 0; round < SETTLE_ROUNDS; round++) {
      double sum = 0;
      for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
        sum += limbs.fullLeafAreaM2[zone];
      }
      double scale = leafAreaM2 / sum;
      state.frame.leafFactor *= scale;
      for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
        limbs.fullLeafAreaM2[zone] *= scale;
        limbs.leafAreaM2[zone] = limbs.fullLeafAreaM2[zone];
      }
      if (round < SETTLE_ROUNDS - 1) {
        interception.compute(state, light, p.light(), p.carbon(), p.species(), openness);
        potential.follow(state, light, p, densityM2M3(state, p.species()), SETTLE_PACE);
      }
    }
  }

  private static final int YOUNG_YEARS = 5;
  private static final double YOUNG_PACE = 0.6;
  private static final int SETTLE_ROUNDS = 12;
  private static final double SETTLE_PACE = 0.5;
}
