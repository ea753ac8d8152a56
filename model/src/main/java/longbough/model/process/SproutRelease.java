package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.TreeEvent;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SproutParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Latent buds awaken in spring.
 *
 * <pre>
 * n = B r v min(1, gh h + gd g),   g = x^2 / (x^2 + xh^2),   x = max(0, D - D0)
 * v = R / (R + Rh)
 * </pre>
 *
 * n new sprouts of a cohort; B its bank of buds; r the species' readiness; h loss of apical control of
 * the limb (0..1; heading far more than removal); D share of live foliage cut in the last year, D0 what
 * is borne without an answer: a threshold, then steep; R reserve over ceiling, carrying vigour v. The
 * bank loses what awakens and fills up slowly; the stimulus is spent. Trunk buds answer the dose only.
 * Source: threshold between half and three quarters clearing, Research Note NE-57; more with dose and
 * in winter, DesRochers et al. 2015; weak trees sprout less, Perrette et al. 2021 (signs); the form is
 * an assumption.
 */
public final class SproutRelease implements Process {

  /** Stimulus left for the year after. */
  private static final double CARRY = 0.5;

  @Override
  public String name() {
    return "sprout release";
  }

  @Override
  public List<String> sources() {
    return List.of("ne57", "desrochers2015", "perrette2021");
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
    double excess = Math.max(0, state.pools.recentDose - p.doseTolerance());
    double dose = excess * excess / (excess * excess + p.doseHalf() * p.doseHalf());
    double reserve = state.pools.reserveFraction();
    double vigour = reserve / (reserve + p.vigourReserve());
    double drive = parameters.species().sproutReadiness() * vigour;
    double born = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      if (state.limbs.alive(limb)) {
        double heading = state.limbs.headingStimulus[limb];
        double answer = Math.min(1, p.headingGain() * heading + p.doseGain() * dose);
        born += awaken(context, limb, drive * answer, heading, vigour, parameters.species().budBankPerLimb());
        state.limbs.headingStimulus[limb] *= CARRY;
      }
    }
    double perSection = parameters.species().budBankPerLimb() * p.trunkShare() * Sprouts.SECTION_M;
    int top = Sprouts.trunkCohort(state.trunk.heightM);
    for (int cohort = Limbs.MAX; cohort <= top; cohort++) {
      boolean headed = cohort == top && !state.trunk.leaderIntact;
      double answer = Math.min(1, (headed ? p.headingGain() : 0) + p.doseGain() * dose);
      born += awaken(context, cohort, drive * answer, headed ? 1 : 0, vigour, perSection);
    }
    state.pools.recentDose *= CARRY;
    if (born > p.heavy() && context.events.on()) {
      context.events.add(new TreeEvent.Sprouted(state.year, born));
    }
  }

  private static double awaken(
      YearContext context, int cohort, double share, double heading, double vigour, double fullBank) {
    Sprouts sprouts = context.state.sprouts;
    SproutParameters p = context.parameters.sprout();
    double bank = sprouts.budBank[cohort];
    double born = bank * Math.min(1, share);
    sprouts.budBank[cohort] = bank - born + p.bankReturn() * Math.max(0, fullBank - bank + born);
    if (born <= 0) {
      return 0;
    }
    double old = sprouts.count[cohort];
    double length = context.parameters.species().sproutShootLengthM() * vigour * (0.5 + 0.5 * heading);
    double all = old + born;
    sprouts.lengthM[cohort] = (old * sprouts.lengthM[cohort] + born * length) / all;
    sprouts.ageYears[cohort] = old * sprouts.ageYears[cohort] / all;
    double position = cohort < Limbs.MAX ? 0.4 + 0.5 * heading : 0;
    sprouts.position[cohort] = (old * sprouts.position[cohort] + born * position) / all;
    sprouts.count[cohort] = all;
    double wood = born * p.woodPerLength3() * length * length * length;
    double able = Spending.structureFor(context, p.reserveShare() * context.state.pools.mobileKgC());
    double built = Math.min(wood, able);
    if (built < wood && wood > 0) {
      sprouts.lengthM[cohort] *= old > 0 ? 1 : built / wood;
    }
    sprouts.woodKgC[cohort] += built;
    Spending.fromReserve(context, built);
    return born;
  }
}
