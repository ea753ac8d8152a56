package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.TreeEvent;
import longbough.model.numeric.Fast;
import longbough.model.parameter.DeclineParameters;
import longbough.model.parameter.SurvivalParameters;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Vitality;
import longbough.model.state.Wounds;

/**
 * Whether the tree lives through the year.
 *
 * <pre>
 * h = h0 + hw kc O / A + hd D^n / (D^n + k^n) + hx s' x + hr c^e (1 + s x),   c = max(0, (ra - r) / (ra - rd))
 * </pre>
 *
 * h chance of dying this year; h0 background; D decline ({@link Decline}), k where half of the rate
 * hd is reached; r reserve at the season's end over its normal, ra the level above which it adds
 * nothing, rd the one at which death is likely, e steepness between them; x drought of the year, 0
 * to 1, s what it adds: a depleted tree dies of the drought that a full one survives; s' how far
 * the last rings fall short ({@link Vigour}), hx what a full drought does to a tree without new
 * wood to carry water; what insects cost is in the reserve already. O open wounds of trunk and
 * limbs over section A of the trunk at breast height, at most 1 (m2/m2), kc class of
 * compartmentalization: the way in for decay and dieback. What a dead limb leaves doesn't count:
 * the trunk seals off a branch that dies, no living wood is opened when it falls or is taken off,
 * and what decay behind it costs is strength. A tree whose maintenance stays unmet beyond a share
 * starves, and an evergreen left with hardly a living shoot is dead. The random number is the same
 * for every regime of one future, so regimes differ by hazard alone. Source: deadly reserve Barker
 * Plotkin et al. 2021; death rates by dieback from annual mortality surveys 2017-2019 (SCBI).
 */
public final class Survival implements Process {

  @Override
  public String name() {
    return "survival";
  }

  @Override
  public List<String> sources() {
    return List.of("barker2021", "scbimortality");
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
    DeclineParameters decline = context.parameters.decline();
    double drought = Math.min(1, 1 - context.worstWater);
    double depleted = p.depletion(context.autumnReserveFraction / p.normalReserve());
    double weak =
        p.reserveHazard() * Fast.pow(depleted, p.reservePower()) * (1 + p.stressFactor() * drought);
    double ill =
        ill(p, vitality.decline)
            + p.droughtHazard()
                * drought
                * Vigour.stunted(decline, state.trunk, decline.poorGrowth());
    double wounds =
        p.woundHazard() * p.classFactor(context.parameters.species()) * openShare(state);
    double hazard = Math.min(1, p.background() + wounds + ill + weak);
    boolean starved = vitality.unmetMaintenanceKgC > p.unmetDeadly() * context.maintenanceNeedKgC;
    boolean bare = 1 - vitality.shootsLost < p.leastShoots();
    if (starved || bare || draw < hazard) {
      vitality.alive = false;
      vitality.deathYear = state.year;
      vitality.cause =
          starved || bare || weak > p.background() + wounds + ill
              ? exhausted(drought, vitality.defoliation)
              : draw < p.background()
                  ? CauseOfDeath.BACKGROUND
                  : ill > wounds ? CauseOfDeath.DECLINE : CauseOfDeath.DIEBACK;
      if (context.events.on()) {
        context.events.add(new TreeEvent.Died(state.year, vitality.cause));
      }
    }
    vitality.unmetMaintenanceKgC = 0;
    vitality.shootsLost = 0;
  }

  private static double ill(SurvivalParameters p, double decline) {
    double rise = Fast.pow(decline / p.declineHalf(), p.declinePower());
    return p.declineHazard() * rise / (1 + rise);
  }

  /** Open wounds of living wood over the trunk's section at breast height, at most 1. */
  private static double openShare(TreeState state) {
    Wounds wounds = state.wounds;
    double open = 0;
    for (int w = 0; w < wounds.count; w++) {
      open += wounds.open(w) && !wounds.sealed[w] ? wounds.openAreaM2(w) : 0;
    }
    double radius = state.trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    return Math.min(1, open / (Math.PI * radius * radius));
  }

  private static CauseOfDeath exhausted(double drought, double defoliation) {
    if (defoliation > 0.5 && defoliation >= drought) {
      return CauseOfDeath.INSECTS;
    }
    return drought > 0.25 ? CauseOfDeath.DROUGHT : CauseOfDeath.STARVED;
  }
}
