package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.TreeEvent;
import longbough.model.parameter.SurvivalParameters;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Vitality;

/**
 * Whether the tree lives through the year.
 *
 * <pre>
 * h = h0 + hw kc O / A + [ hr c^2 + hg g ] (1 + s x),   c = min(1, max(0, (ra - r) / (ra - rd)))
 * g = max(0, 1 - w / (p m)),   x = max(drought, defoliation)
 * </pre>
 *
 * h chance of dying this year; h0 background; r reserve at the season's end over its normal, ra the
 * level above which it adds nothing, rd the deadly one; w ring width over habit m, p the share
 * below which growth adds hazard; x stress of the year, 0 to 1; O open wounds of trunk and limbs
 * over section A of the trunk at breast height, at most 1 (m2/m2), kc class of
 * compartmentalization: the way in for decay and dieback. A tree whose maintenance stays unmet
 * beyond a share starves. The random number is the same for every regime of one future, so regimes
 * differ by hazard alone. Source: deadly reserve Barker Plotkin et al. 2021; death rates by
 * condition and growth before death SCBI 2014-2019.
 */
public final class Survival implements Process {

  @Override
  public String name() {
    return "survival";
  }

  @Override
  public List<String> sources() {
    return List.of("barker2021", "scbi2018");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    SurvivalParameters p = context.parameters.survival();
    Vitality vitality = state.vitality;
    if (!vitality.alive) {
      return;
    }
    double draw = context.random.uniform();
    double drought = Math.min(1, 1 - context.worstWater);
    double stress = Math.max(drought, vitality.defoliation);
    double depleted = depletion(p, context.autumnReserveFraction / p.normalReserve());
    double stunted = stunted(p, state.trunk);
    double weak = p.reserveHazard() * depleted * depleted + p.growthHazard() * stunted;
    double wounds =
        p.woundHazard() * p.classFactor(context.parameters.species()) * openShare(state);
    double hazard = Math.min(1, p.background() + wounds + weak * (1 + p.stressFactor() * stress));
    boolean starved = vitality.unmetMaintenanceKgC > p.unmetDeadly() * context.maintenanceNeedKgC;
    if (starved || draw < hazard) {
      vitality.alive = false;
      vitality.deathYear = state.year;
      vitality.cause =
          starved || weak > p.background() + wounds
              ? exhausted(drought, vitality.defoliation)
              : draw < p.background() ? CauseOfDeath.BACKGROUND : CauseOfDeath.DIEBACK;
      if (context.events.on()) {
        context.events.add(new TreeEvent.Died(state.year, vitality.cause));
      }
    }
    vitality.unmetMaintenanceKgC = 0;
  }

  private static double depletion(SurvivalParameters p, double reserve) {
    return Math.min(
        1, Math.max(0, (p.safeReserve() - reserve) / (p.safeReserve() - p.deadlyReserve())));
  }

  private static double stunted(SurvivalParameters p, Trunk trunk) {
    if (trunk.rings < 2 || trunk.ringMemoryM <= 0) {
      return 0;
    }
    double ring = trunk.ringRadiusM[trunk.rings - 1] - trunk.ringRadiusM[trunk.rings - 2];
    return Math.max(0, 1 - ring / (p.poorGrowth() * trunk.ringMemoryM));
  }

  /** Open wounds over the trunk's section at breast height, at most 1. */
  private static double openShare(TreeState state) {
    double radius = state.trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    return Math.min(1, state.wounds.openAreaM2() / (Math.PI * radius * radius));
  }

  private static CauseOfDeath exhausted(double drought, double defoliation) {
    if (defoliation > 0.5 && defoliation >= drought) {
      return CauseOfDeath.INSECTS;
    }
    return drought > 0.25 ? CauseOfDeath.DROUGHT : CauseOfDeath.STARVED;
  }
}
