package longbough.runner.batch;

import java.util.Map;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Regime;
import longbough.model.state.CauseOfDeath;
import longbough.runner.compare.Living;
import longbough.runner.compare.Metric;
import longbough.runner.compare.RegimeResult;
import longbough.runner.survival.RegimeSurvival;

/**
 * What becomes of one tree under one regime. All but survival and cost are means over the futures
 * of what happens while the tree lives, so that death is counted once.
 *
 * @param regime name of the regime
 * @param years years played
 * @param alive share of futures in which the tree lives at the end
 * @param aliveLow lower end of its 95 % band
 * @param aliveHigh upper end
 * @param cause what most of the others died of; {@code NONE} where none died
 * @param reserve lowest reserve of any year, share of its ceiling
 * @param strengthLoss most of the trunk's strength lost in any year, today included
 * @param leafMissing leaf area of the last year lived, short of what the tree would carry today
 *     with a full crown, share; below 0 where it has grown beyond
 * @param cost of all visits, discounted
 */
public record Outlook(
    String regime,
    int years,
    double alive,
    double aliveLow,
    double aliveHigh,
    CauseOfDeath cause,
    double reserve,
    double strengthLoss,
    double leafMissing,
    double cost) {

  static Outlook of(
      Regime regime, History[] futures, int years, double discountRate, double fullLeafM2) {
    RegimeSurvival survival = RegimeSurvival.of(new RegimeResult(regime, futures, null), years);
    double reserve = 0;
    double strength = 0;
    double leaf = 0;
    double cost = 0;
    for (History future : futures) {
      reserve += lowestReserve(future, years);
      strength += mostStrengthLost(future, years);
      leaf += 1 - lastLeafM2(future, years) / fullLeafM2;
      cost += Metric.COST_DISCOUNTED.figure(future, years, discountRate);
    }
    int n = futures.length;
    return new Outlook(
        regime.name(),
        years,
        survival.alive(years),
        survival.low(years),
        survival.high(years),
        heaviest(survival.causes(years)),
        reserve / n,
        strength / n,
        leaf / n,
        cost / n);
  }

  private static double lowestReserve(History future, int years) {
    double lowest = future.value(YearColumn.RESERVE_FRACTION, 0);
    for (int year = 1; year <= years && Living.alive(future, year); year++) {
      lowest = Math.min(lowest, future.value(YearColumn.RESERVE_FRACTION, year));
    }
    return lowest;
  }

  private static double mostStrengthLost(History future, int years) {
    double most = future.value(YearColumn.STRENGTH_LOSS_FRACTION, 0);
    for (int year = 1; year <= years && Living.alive(future, year); year++) {
      most = Math.max(most, future.value(YearColumn.STRENGTH_LOSS_FRACTION, year));
    }
    return most;
  }

  private static double lastLeafM2(History future, int years) {
    int last = 0;
    while (last < years && Living.alive(future, last + 1)) {
      last++;
    }
    return future.value(YearColumn.LEAF_AREA_M2, last);
  }

  private static CauseOfDeath heaviest(Map<CauseOfDeath, Double> causes) {
    CauseOfDeath heaviest = CauseOfDeath.NONE;
    double most = 0;
    for (Map.Entry<CauseOfDeath, Double> cause : causes.entrySet()) {
      if (cause.getValue() > most) {
        most = cause.getValue();
        heaviest = cause.getKey();
      }
    }
    return heaviest;
  }
}
