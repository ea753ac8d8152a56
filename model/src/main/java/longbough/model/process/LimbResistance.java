package longbough.model.process;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import longbough.model.parameter.StrengthParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;

/**
 * The gust that would break the weakest limb or sprout at its union.
 *
 * <p>Moment at the base M = e q Σ A(zone) φ(z) · distance along the limb (N m): leaves far out pull
 * on a long lever; e is the share of its drag that bends one limb. Stress M / (π/32 d³) is compared
 * with κ · MOR · j (Pa), with d base diameter (m), κ branch strength over clear-wood strength
 * (strength check S11), j the strength of the union: below 1 for a codominant fork (branch over
 * trunk diameter above a limit), less where its bark is included (S09, S10; where nobody has
 * looked, by the species' share of forks with included bark), and for a sprout j0 + (1 - j0) t / (t
 * + t1), t its age (years), because a sprout starts in the outermost ring; a limb whose end was
 * headed and not restored keeps only a share, since its new crown hangs on such shoots. Where
 * sprouts sit on decayed trunk, j falls with the decayed share of its section; below a heading cut
 * of a limb by the cube of the decayed share of its radius. A sprout's base follows from its wood
 * as a slender stem of form factor f: d² = 4 wood / (π f ρ length), ρ kg C m-3. Every limb and
 * cohort leaves its hazard behind ({@link BranchHazard}), since strengths scatter from limb to
 * limb.
 */
public final class LimbResistance implements Process {
  private final LimbAngles angles = new LimbAngles();
  private double stressPerDemand;

  @Override
  public String name() {
    return "limb resistance";
  }

  @Override
  public List<String> sources() {
    return List.of("branchtests", "smiley2003", "dahle2022", "hazeltests", "weibull1939");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of();
  }

  @Override
  public void run(YearContext context) {
    if (!context.state.vitality.alive) {
      return;
    }
    WindLoad wind = context.wind;
    wind.weakestCohort = WindLoad.NONE;
    wind.limbInLeafMs = CriticalGust.NEVER_MS;
    wind.limbLeaflessMs = CriticalGust.NEVER_MS;
    wind.weakestDiameterM = 0;
    wind.branchHazard = 0;
    Arrays.fill(wind.limbHazard, 0);
    Arrays.fill(wind.sproutHazard, 0);
    stressPerDemand = stressPerDemand(context);
    double worst = 0;
    if (wind.centreM > 0) {
      limbDecay(context.state.wounds, wind);
      worst = Math.max(weakestLimb(context, 0), 0);
      worst = weakestSprout(context, worst);
    }
    if (worst > 0) {
      criticalGusts(context, worst);
    }
  }

  private static void limbDecay(Wounds wounds, WindLoad wind) {
    Arrays.fill(wind.limbDecayShare, 0);
    for (int w = 0; w < wounds.count; w++) {
      int limb = wounds.limb[w];
      if (wounds.acrossStem[w] && limb >= 0 && wounds.parentRadiusM[w] > 0) {
        double share = wounds.columnDepthM[w] / wounds.parentRadiusM[w];
        wind.limbDecayShare[limb] = Math.max(wind.limbDecayShare[limb], share);
      }
    }
  }

  private double weakestLimb(YearContext context, double least) {
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    double worst = least;
    for (int limb = 0; limb < limbs.count; limb++) {
      double d = limbs.baseDiameterM[limb];
      if (limbs.alive(limb) && d >= context.parameters.strength().leastDiameterM()) {
        double demand = limbMoment(context, limb) / (union(context, limb) * d * d * d);
        context.wind.limbHazard[limb] = hazard(context, demand);
        if (demand > worst) {
          worst = demand;
          weakest(context.wind, limb, false, d);
        }
      }
    }
    return worst;
  }

  // Drag area times lever times profile of a limb's leaves, m3.
  private double limbMoment(YearContext context, int limb) {
    Limbs limbs = context.state.limbs;
    StrengthParameters p = context.parameters.strength();
    double length = limbs.lengthM[limb];
    double rise = length * angles.cos(limbs, limb);
    double sum = 0;
    for (int zone = 0; zone < Limbs.ZONES; zone++) {
      double position = Limbs.zonePosition(zone);
      double profile = p.profile().inLeaf(Trunk.stationNear(limbs.heightM[limb] + rise * position));
      sum += limbs.leafAreaM2[limb * Limbs.ZONES + zone] * position * length * profile;
    }
    double along = context.state.sprouts.position[limb];
    double profile = p.profile().inLeaf(Trunk.stationNear(limbs.heightM[limb] + rise * along));
    sum += context.state.sprouts.leafAreaM2[limb] * along * length * profile;
    return sum * context.wind.areaPerLeafArea;
  }

  private static double union(YearContext context, int limb) {
    StrengthParameters p = context.parameters.strength();
    Limbs limbs = context.state.limbs;
    double trunkM = 2 * context.state.trunk.radiusAtM(limbs.heightM[limb]);
    boolean fork =
        limbs.codominant[limb] || limbs.baseDiameterM[limb] > p.codominantRatio() * trunkM;
    double included = fork ? context.parameters.species().unionWeakness() : 0;
    if (limbs.includedBark[limb]) {
      included = 1;
    }
    double headed = limbs.tip[limb] == TipState.HEADED.code() ? p.headedLimbFactor() : 1;
    return headed
        * (fork ? p.codominantFactor() : 1)
        * (1 - included * (1 - p.includedBarkFactor()));
  }

  private double weakestSprout(YearContext context, double least) {
    Sprouts sprouts = context.state.sprouts;
    StrengthParameters p = context.parameters.strength();
    double worst = least;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.count[cohort] > 0 && sprouts.leafAreaM2[cohort] > 0) {
        double d = SproutStem.diameterM(context, cohort);
        if (d >= p.leastSproutM()) {
          double demand =
              sproutMoment(context, cohort) / (sproutUnion(context, cohort) * d * d * d);
          context.wind.sproutHazard[cohort] = hazard(context, demand);
          if (demand > worst) {
            worst = demand;
            weakest(context.wind, cohort, true, d);
          }
        }
      }
    }
    return worst;
  }

  private static double sproutMoment(YearContext context, int cohort) {
    TreeState state = context.state;
    double half = state.sprouts.lengthM[cohort] / 2;
    double foot =
        cohort < Limbs.MAX
            ? state.limbs.heightM[cohort]
            : Math.min(Sprouts.trunkHeightM(cohort), state.trunk.heightM);
    double profile = context.parameters.strength().profile().inLeaf(Trunk.stationNear(foot + half));
    double leaf = state.sprouts.leafAreaM2[cohort] / state.sprouts.count[cohort];
    return context.wind.areaPerLeafArea * leaf * half * profile;
  }

  private static double sproutUnion(YearContext context, int cohort) {
    StrengthParameters p = context.parameters.strength();
    double age = context.state.sprouts.ageYears[cohort];
    double union =
        p.sproutUnionStart() + (1 - p.sproutUnionStart()) * age / (age + p.sproutUnionHalfYears());
    if (cohort >= Limbs.MAX) {
      double height = Math.min(Sprouts.trunkHeightM(cohort), context.state.trunk.heightM);
      union *=
          1 - p.decayedUnionLoss() * context.state.sections.areaFraction[Trunk.stationNear(height)];
    } else {
      double decay = context.wind.limbDecayShare[cohort];
      union *= 1 - p.decayedUnionLoss() * decay * decay * decay;
    }
    return union;
  }

  private static void weakest(WindLoad wind, int cohort, boolean sprout, double diameterM) {
    wind.weakestCohort = cohort;
    wind.weakestIsSprout = sprout;
    wind.weakestDiameterM = diameterM;
  }

  private double hazard(YearContext context, double demand) {
    double hazard = BranchHazard.of(context.parameters.strength(), stressPerDemand * demand);
    context.wind.branchHazard += hazard;
    return hazard;
  }

  private static double strengthPa(YearContext context) {
    return Math.PI
        / 32
        * context.parameters.strength().limbStrengthShare()
        * context.parameters.species().modulusOfRuptureMpa()
        * 1e6;
  }

  private static double loadPa(YearContext context) {
    StrengthParameters p = context.parameters.strength();
    return p.limbLoadShare() * p.loadPa() * p.dragCoefficient();
  }

  /** Stress over mean strength at the reference speed in leaf for a unit of demand. */
  private static double stressPerDemand(YearContext context) {
    return loadPa(context) / strengthPa(context);
  }

  // Leafless, the profile's slightly steeper power is neglected beside the share of drag that
  // stays.
  private static void criticalGusts(YearContext context, double demand) {
    StrengthParameters p = context.parameters.strength();
    double strength = strengthPa(context);
    double load = loadPa(context) * demand;
    double exposure = context.site.windExposure;
    context.wind.limbInLeafMs = CriticalGust.of(p, true, exposure, strength, load);
    context.wind.limbLeaflessMs =
        context.parameters.species().evergreen()
            ? context.wind.limbInLeafMs
            : CriticalGust.of(p, false, exposure, strength, load * p.leaflessShare());
  }
}
