package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.history.TreeEvent;
import longbough.model.parameter.StrengthParameters;
import longbough.model.pruning.Placement;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.Limbs;
import longbough.model.state.Organ;
import longbough.model.state.Pools;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;

/**
 * The year's strongest gust (m/s at 10 m) against what the tree withstands: above the critical gust
 * of stem or roots the tree is lost, else each limb and each cohort of sprouts breaks by its own
 * chance ({@link BranchHazard}). A limb tears out at its base, with its leaves, its sprouts and its
 * share of the reserve, and leaves a torn wound on the trunk; of a sprout cohort a share breaks.
 */
public final class WindFailure implements Process {
  @Override
  public String name() {
    return "wind failure";
  }

  @Override
  public List<String> sources() {
    return List.of("gumbel1958");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(
        StatePart.LIMBS,
        StatePart.FOLIAGE,
        StatePart.SPROUTS,
        StatePart.WOUNDS,
        StatePart.RESERVE,
        StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    if (!context.state.vitality.alive) {
      return;
    }
    WindLoad wind = context.wind;
    boolean inLeaf = context.site.gustInLeaf || context.parameters.species().evergreen();
    double gust = context.site.gustMs;
    double stem = inLeaf ? wind.stemInLeafMs : wind.stemLeaflessMs;
    double root = inLeaf ? wind.rootInLeafMs : wind.rootLeaflessMs;
    if (gust > Math.min(stem, root)) {
      kill(context, stem <= root ? CauseOfDeath.STEM_FAILURE : CauseOfDeath.UPROOTED);
    } else {
      breakBranches(context, gust, inLeaf);
    }
  }

  private static void kill(YearContext context, CauseOfDeath cause) {
    TreeState state = context.state;
    state.vitality.alive = false;
    state.vitality.cause = cause;
    state.vitality.deathYear = state.year;
    if (context.events.on()) {
      context.events.add(new TreeEvent.Died(state.year, cause));
    }
  }

  private static void breakBranches(YearContext context, double gustMs, boolean inLeaf) {
    WindLoad wind = context.wind;
    StrengthParameters p = context.parameters.strength();
    double factor = BranchHazard.factor(p, inLeaf, context.site.windExposure, gustMs);
    // Shoots first: those of a limb that breaks go with it.
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      double diameterM = SproutStem.diameterM(context, cohort);
      if (breaks(context, wind.sproutHazard[cohort], factor)) {
        breakSprouts(context, cohort, p.sproutBreakShare());
        broken(context, diameterM, true);
      }
    }
    for (int limb = 0; limb < context.state.limbs.count; limb++) {
      double diameterM = context.state.limbs.baseDiameterM[limb];
      if (breaks(context, wind.limbHazard[limb], factor)) {
        openTear(context, limb);
        breakSprouts(context, limb, 1);
        breakLimb(context, limb);
        broken(context, diameterM, false);
      }
    }
  }

  private static boolean breaks(YearContext context, double hazard, double factor) {
    return hazard > 0 && context.random.uniform() < BranchHazard.chance(hazard * factor);
  }

  private static void broken(YearContext context, double diameterM, boolean sprout) {
    context.light.stale = true;
    if (context.events.on()) {
      context.events.add(new TreeEvent.LimbBroken(context.state.year, diameterM, sprout));
    }
  }

  private static void breakSprouts(YearContext context, int cohort, double share) {
    Sprouts sprouts = context.state.sprouts;
    double leaf = share * sprouts.leafKgC[cohort];
    double wood = share * sprouts.woodKgC[cohort];
    context.ledger.book(Flow.BROKEN, leaf + wood);
    if (share >= 1) {
      sprouts.clearShoots(cohort);
      sprouts.budBank[cohort] = 0;
      return;
    }
    sprouts.leafKgC[cohort] -= leaf;
    sprouts.woodKgC[cohort] -= wood;
    sprouts.leafAreaM2[cohort] *= 1 - share;
    sprouts.count[cohort] *= 1 - share;
  }

  private static void breakLimb(YearContext context, int limb) {
    Limbs limbs = context.state.limbs;
    Pools pools = context.state.pools;
    double leaf = 0;
    for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
      leaf += limbs.leafKgC[zone];
    }
    double reserve = limbs.alive(limb) ? storedKgC(context, limb) : 0;
    pools.take(Organ.BRANCH, reserve);
    context.ledger.book(Flow.BROKEN, leaf + limbs.woodKgC[limb] + reserve);
    limbs.clear(limb);
    context.state.wounds.loseWithLimb(limb, context.state.year);
  }

  /** What the branches hold of the reserve by a limb's share of their living wood, kg C. */
  private static double storedKgC(YearContext context, int limb) {
    TreeState state = context.state;
    double living = context.parameters.reserve().branchLivingShare();
    double wood = state.livingBranchKgC(living);
    double share = wood > 0 ? living * state.limbs.woodKgC[limb] / wood : 0;
    return share * state.pools.storedKgC(Organ.BRANCH);
  }

  private static void openTear(YearContext context, int limb) {
    StrengthParameters p = context.parameters.strength();
    TreeState state = context.state;
    Wounds wounds = state.wounds;
    double d = state.limbs.baseDiameterM[limb];
    int w = wounds.add();
    wounds.year[w] = state.year;
    wounds.month[w] = Math.max(1, context.month);
    wounds.placement[w] = (byte) Placement.FLUSH.ordinal();
    wounds.heightM[w] = state.limbs.heightM[limb];
    wounds.azimuthRad[w] = state.limbs.azimuthRad[limb];
    wounds.cutDiameterM[w] = d;
    wounds.faceWidthM[w] = d * p.tearWidthPerDiameter();
    wounds.faceHeightM[w] = d * p.tearHeightPerDiameter();
    wounds.openWidthM[w] = wounds.faceWidthM[w];
    wounds.openHeightM[w] = wounds.faceHeightM[w];
    wounds.parentRadiusM[w] = state.trunk.radiusAtM(state.limbs.heightM[limb]);
    wounds.heartwood[w] = d > p.tearHeartwoodM();
  }
}
