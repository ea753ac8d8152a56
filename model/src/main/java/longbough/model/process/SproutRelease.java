package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.TreeEvent;
import longbough.model.numeric.Fast;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SproutParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Latent buds awaken in spring.
 *
 * <pre>
 * on a limb:    n = B r v min(1, gh h + gd g + gb E c)
 * on the trunk: n = B r v min(1, gh h + E (gd g + gb s))
 * g = x^2 / (x^2 + xh^2),   x = max(0, w D - D0),   c = y^2 / (y^2 + yh^2),   y = 1 - b
 * v = R / (R + Rh)
 * </pre>
 *
 * n new sprouts of a cohort; B its bank of buds; r the species' readiness; h loss of apical control
 * of the limb (0..1; heading far more than removal); D share of live foliage cut in the last year,
 * D0 what is borne without an answer: a threshold, then steep; w more than 1 by the share that was
 * cut leafless; b bud fullness of the inner limb, E light that reaches the wood (0..1): bare lit
 * wood breaks out, which is what lion-tailing leaves behind; s 1 where the trunk has lost the limbs
 * it bore when measured, else 0; R reserve over ceiling, carrying vigour v. Trunk buds have a bank
 * of their own by species and metre and answer only as far as light falls on the bark ({@link
 * TrunkLight}): the higher a stem is cleared the more, and year after year while it stays lit. The
 * bank loses what awakens and fills up slowly; the stimulus is spent. Source: many sprouts on
 * raised Sitka spruces of thinned stands, about as many at every raised height, Deal et al. 2003;
 * threshold between half and three quarters clearing, Research Note NE-57; more with dose and in
 * winter, DesRochers et al. 2015; weak trees sprout less, Perrette et al. 2021 (signs); the form is
 * an assumption.
 */
public final class SproutRelease implements Process {

  /**
   * Where sprouts of an unheaded limb sit along it, and how far towards its end those of a headed
   * one.
   */
  private static final double BASAL = 0.4;

  private static final double HEADED_END = 0.8;

  private final double[] born = new double[Sprouts.MAX];
  private final double[] heading = new double[Sprouts.MAX];

  /** Stimulus left for the year after. */
  private static final double CARRY = 0.5;

  @Override
  public String name() {
    return "sprout release";
  }

  @Override
  public List<String> sources() {
    return List.of("ne57", "desrochers2015", "perrette2021", "deal2003");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.SPROUTS, StatePart.LIMBS, StatePart.POOLS, StatePart.RESERVE);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    ModelParameters parameters = context.parameters;
    SproutParameters p = parameters.sprout();
    double season = 1 + (p.winterGain() - 1) * state.pools.leaflessShare;
    double excess = Math.max(0, state.pools.recentDose * season - p.doseTolerance());
    double dose = hill(excess, p.doseHalf());
    double reserve = state.pools.reserveFraction();
    double vigour = reserve / (reserve + p.vigourReserve());
    double drive = parameters.species().sproutReadiness() * vigour;
    born(context, drive, dose);
    double bornAll = 0;
    double wood = 0;
    double firstM = parameters.species().sproutShootLengthM() * vigour;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      bornAll += born[cohort];
      double length = firstM * lengthShare(heading[cohort]);
      wood += born[cohort] * p.woodPerLength3() * length * length * length;
    }
    double able = Spending.structureFor(context, p.reserveShare() * state.pools.mobileKgC());
    double built = Math.min(wood, able);
    // Where the reserve can't carry all shoots at full length, all stay shorter.
    double shorter = wood > 0 ? cubeRoot(built / wood) : 1;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      if (born[cohort] > 0) {
        join(context, cohort, firstM * lengthShare(heading[cohort]) * shorter);
      }
    }
    Spending.fromReserve(context, built);
    state.pools.recentDose *= CARRY;
    if (bornAll > p.heavy() && context.events.on()) {
      context.events.add(new TreeEvent.Sprouted(state.year, bornAll));
    }
  }

  /**
   * Fills how many sprouts each cohort bears, takes them from the banks and spends the stimulus.
   */
  private void born(YearContext context, double drive, double dose) {
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    ModelParameters parameters = context.parameters;
    SproutParameters p = parameters.sprout();
    java.util.Arrays.fill(born, 0);
    java.util.Arrays.fill(heading, 0);
    double bank = parameters.species().budBankPerLimb();
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        int inner = limb * Limbs.ZONES + Limbs.INNER;
        double bare = hill(1 - limbs.budFullness[inner], p.bareHalf());
        double light = Math.min(1, context.light.lightShare[context.light.zoneCell[inner]]);
        heading[limb] = limbs.headingStimulus[limb];
        double answer =
            p.headingGain() * heading[limb] + p.doseGain() * dose + p.bareGain() * bare * light;
        draw(context, limb, drive * Math.min(1, answer), bank);
        limbs.headingStimulus[limb] *= CARRY;
      }
    }
    double perSection = parameters.species().trunkBudsPerM() * Sprouts.SECTION_M;
    int top = Sprouts.trunkCohort(state.trunk.heightM);
    for (int cohort = Limbs.MAX; cohort <= top; cohort++) {
      heading[cohort] = cohort == top && !state.trunk.leaderIntact ? 1 : 0;
      double heightM = Math.min(Sprouts.trunkHeightM(cohort), state.trunk.heightM);
      double bared = TrunkLight.bared(heightM, state) ? 1 : 0;
      double called = p.doseGain() * dose + p.bareGain() * bared;
      double light = called > 0 ? TrunkLight.at(heightM, state, context) : 0;
      double answer = p.headingGain() * heading[cohort] + light * called;
      draw(context, cohort, drive * Math.min(1, answer), perSection);
    }
  }

  private void draw(YearContext context, int cohort, double share, double fullBank) {
    Sprouts sprouts = context.state.sprouts;
    double bank = sprouts.budBank[cohort];
    born[cohort] = bank * Math.min(1, share);
    double left = bank - born[cohort];
    sprouts.budBank[cohort] =
        left + context.parameters.sprout().bankReturn() * Math.max(0, fullBank - left);
  }

  private void join(YearContext context, int cohort, double lengthM) {
    Sprouts sprouts = context.state.sprouts;
    double young = born[cohort];
    double old = sprouts.count[cohort];
    double all = old + young;
    double position = cohort < Limbs.MAX ? BASAL + (1 - BASAL) * HEADED_END * heading[cohort] : 0;
    sprouts.lengthM[cohort] = (old * sprouts.lengthM[cohort] + young * lengthM) / all;
    sprouts.ageYears[cohort] = old * sprouts.ageYears[cohort] / all;
    sprouts.position[cohort] = (old * sprouts.position[cohort] + young * position) / all;
    sprouts.count[cohort] = all;
    sprouts.woodKgC[cohort] +=
        young * context.parameters.sprout().woodPerLength3() * lengthM * lengthM * lengthM;
  }

  private static double hill(double x, double half) {
    return x > 0 ? x * x / (x * x + half * half) : 0;
  }

  /** Shoots from a heading cut are the longest; those from old wood are half as long. */
  private static double lengthShare(double heading) {
    return (1 + heading) / 2;
  }

  private static double cubeRoot(double x) {
    return Fast.pow(x, 1.0 / 3);
  }
}
