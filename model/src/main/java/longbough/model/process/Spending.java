package longbough.model.process;

import longbough.model.history.Flow;
import longbough.model.state.Pools;

/** Paying for new structure, with the respiration that building costs. */
final class Spending {

  private Spending() {}

  /**
   * Takes structure and its growth respiration out of the reserve near to the buds, and books both.
   *
   * @param structureKgC carbon that ends in the new tissue, kg C
   */
  static void fromReserve(YearContext context, double structureKgC) {
    double cost = context.parameters.carbon().growthRespiration() * structureKgC;
    context.state.pools.takeNear(structureKgC + cost);
    book(context, structureKgC, cost);
  }

  /** The same out of this year's growth budget. */
  static void fromBudget(YearContext context, double structureKgC) {
    double cost = context.parameters.carbon().growthRespiration() * structureKgC;
    Pools pools = context.state.pools;
    pools.growthBudgetKgC -= structureKgC + cost;
    book(context, structureKgC, cost);
  }

  /** Structure that an amount of sugar can build, kg C. */
  static double structureFor(YearContext context, double sugarKgC) {
    return Math.max(0, sugarKgC) / (1 + context.parameters.carbon().growthRespiration());
  }

  /** Sugar that a structure costs, kg C. */
  static double costOf(YearContext context, double structureKgC) {
    return structureKgC * (1 + context.parameters.carbon().growthRespiration());
  }

  private static void book(YearContext context, double structureKgC, double cost) {
    context.ledger.book(Flow.GROWTH_RESPIRATION, cost);
    context.ledger.built(structureKgC);
  }
}
