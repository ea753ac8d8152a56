package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.TreeEvent;
import longbough.model.numeric.Fast;
import longbough.model.parameter.StrengthParameters;
import longbough.model.state.Sections;
import longbough.model.state.Trunk;
import longbough.model.state.Vitality;

/**
 * Yearly probability that the year's strongest gust breaks the stem, uproots the tree or breaks a
 * limb.
 *
 * <p>The yearly highest gust follows Gumbel's distribution, P(gust ≤ u) = exp(-exp(-(u - μ) / β)),
 * with μ and β (m/s) from the climate's ten-year and fifty-year gusts; it comes in leaf with a
 * fixed probability. For stem and roots P = P(gust > critical gust); for the limbs, whose strengths
 * scatter, P = ∫ P(any limb breaks | u) dF(u) ({@link BranchHazard}), summed over steps of the
 * reduced variate (u - μ) / β. One gust loads all parts, so that the whole is P(gust > c) + the
 * integral up to c, with c the lesser critical gust of stem and roots, and not the sum.
 */
public final class FailureProbability implements Process {
  // Reduced variates of the return periods: -ln(-ln(1 - 1/T)).
  private static final double TEN_YEARS = -Fast.log(-Fast.log(1 - 1 / 10.0));
  // Below this rate the series of 1 - exp(-rate) is exact where the difference would lose its
  // digits.
  private static final double SELDOM = 1e-5;
  private static final double FIFTY_YEARS = -Fast.log(-Fast.log(1 - 1 / 50.0));

  // Steps of the reduced variate from gusts reached nearly every year to one year in 160,000.
  private static final double LOWEST = -2;
  private static final double STEP = 0.5;
  private static final int STEPS = 28;
  private static final double[] BELOW = new double[STEPS + 1];

  static {
    for (int step = 0; step <= STEPS; step++) {
      BELOW[step] = below(LOWEST + step * STEP);
    }
  }

  private final double[] inLeafFactors = new double[STEPS];
  private final double[] leaflessFactors = new double[STEPS];
  private StrengthParameters metStrength;
  private double metMode;
  private double metScale;
  private double metExposure;
  private double anyLimb;
  private double limbAlone;

  @Override
  public String name() {
    return "failure probability";
  }

  @Override
  public List<String> sources() {
    return List.of("gumbel1958", "weibull1939");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    Vitality vitality = context.state.vitality;
    if (!vitality.alive) {
      return;
    }
    WindLoad wind = context.wind;
    double stem = exceeded(context, wind.stemInLeafMs, wind.stemLeaflessMs);
    double root = exceeded(context, wind.rootInLeafMs, wind.rootLeaflessMs);
    double trunkInLeafMs = Math.min(wind.stemInLeafMs, wind.rootInLeafMs);
    double trunkLeaflessMs = Math.min(wind.stemLeaflessMs, wind.rootLeaflessMs);
    limbs(context, trunkInLeafMs, trunkLeaflessMs);
    vitality.stemFailureProbability = stem;
    vitality.uprootingProbability = root;
    vitality.limbFailureProbability = anyLimb;
    vitality.failureProbability =
        Math.min(1, exceeded(context, trunkInLeafMs, trunkLeaflessMs) + limbAlone);
    worst(context);
  }

  // Probability that any limb breaks, and that one does in a gust below a speed.
  private void limbs(YearContext context, double belowInLeafMs, double belowLeaflessMs) {
    anyLimb = 0;
    limbAlone = 0;
    double scale =
        (context.site.gustFiftyYearMs - context.site.gustTenYearMs) / (FIFTY_YEARS - TEN_YEARS);
    if (!(context.wind.branchHazard > 0) || !(scale > 0)) {
      return;
    }
    double mode = context.site.gustTenYearMs - TEN_YEARS * scale;
    meet(context, mode, scale);
    double share =
        context.parameters.species().evergreen()
            ? 1
            : context.parameters.strength().gustInLeafShare();
    add(context.wind.branchHazard, share, inLeafFactors, below((belowInLeafMs - mode) / scale));
    if (share < 1) {
      double highest = below((belowLeaflessMs - mode) / scale);
      add(context.wind.branchHazard, 1 - share, leaflessFactors, highest);
    }
  }

  private void add(double hazard, double share, double[] factors, double highest) {
    for (int step = 0; step < STEPS; step++) {
      double chance = share * BranchHazard.chance(factors[step] * hazard);
      anyLimb += chance * (BELOW[step + 1] - BELOW[step]);
      double weight = Math.min(highest, BELOW[step + 1]) - BELOW[step];
      limbAlone += weight > 0 ? chance * weight : 0;
    }
  }

  // The same gusts come back every year: their factors are taken once for a site and its numbers.
  private void meet(YearContext context, double mode, double scale) {
    StrengthParameters p = context.parameters.strength();
    double exposure = context.site.windExposure;
    if (p == metStrength && mode == metMode && scale == metScale && exposure == metExposure) {
      return;
    }
    for (int step = 0; step < STEPS; step++) {
      double gustMs = mode + scale * (LOWEST + (step + 0.5) * STEP);
      inLeafFactors[step] = BranchHazard.factor(p, true, exposure, gustMs);
      leaflessFactors[step] = BranchHazard.factor(p, false, exposure, gustMs);
    }
    metStrength = p;
    metMode = mode;
    metScale = scale;
    metExposure = exposure;
  }

  /** Probability that the yearly highest gust stays below a reduced variate. */
  private static double below(double reduced) {
    return Fast.exp(-Fast.exp(-reduced));
  }

  private static double exceeded(YearContext context, double inLeafMs, double leaflessMs) {
    if (context.parameters.species().evergreen()) {
      return exceedance(inLeafMs, context.site.gustTenYearMs, context.site.gustFiftyYearMs);
    }
    double share = context.parameters.strength().gustInLeafShare();
    return share * exceedance(inLeafMs, context.site.gustTenYearMs, context.site.gustFiftyYearMs)
        + (1 - share)
            * exceedance(leaflessMs, context.site.gustTenYearMs, context.site.gustFiftyYearMs);
  }

  /** Yearly probability that the highest gust exceeds a speed, both m/s at 10 m in the open. */
  static double exceedance(double speedMs, double tenYearMs, double fiftyYearMs) {
    double scale = (fiftyYearMs - tenYearMs) / (FIFTY_YEARS - TEN_YEARS);
    if (!(scale > 0)) {
      return 0;
    }
    double reduced = TEN_YEARS + (speedMs - tenYearMs) / scale;
    double rate = Fast.exp(-reduced);
    return rate < SELDOM ? rate * (1 - rate / 2) : 1 - Fast.exp(-rate);
  }

  /**
   * Station where decay has taken most of the trunk's strength, thin tops apart; without decay, the
   * most loaded.
   */
  private static int mostDecayed(YearContext context) {
    Trunk trunk = context.state.trunk;
    Sections sections = context.state.sections;
    double least =
        context.parameters.strength().reportedTopShare() * trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    int found = context.wind.worstStation;
    double most = 0;
    for (int s = 0; s < trunk.stations; s++) {
      if (sections.decayed[s] && trunk.radiusM[s] >= least && sections.strengthLoss[s] > most) {
        most = sections.strengthLoss[s];
        found = s;
      }
    }
    return found;
  }

  private static void worst(YearContext context) {
    Vitality vitality = context.state.vitality;
    Sections sections = context.state.sections;
    int station = mostDecayed(context);
    double before = vitality.worstStrengthLoss;
    vitality.worstStation = station;
    vitality.worstDecayAreaFraction = sections.areaFraction[station];
    vitality.worstStrengthLoss = sections.strengthLoss[station];
    vitality.worstWallRatio = sections.wallRatio[station];
    double reported = context.parameters.decay().reportedStrengthLoss();
    if (context.events.on() && before < reported && vitality.worstStrengthLoss >= reported) {
      double height = station * Trunk.STATION_STEP_M;
      context.events.add(
          new TreeEvent.DecayReached(context.state.year, height, vitality.worstStrengthLoss));
    }
  }
}
