package longbough.runner.compare;

import java.util.Locale;
import longbough.model.history.History;
import longbough.model.history.YearColumn;

/**
 * The figures by which regimes are compared, one a future, each knowing which direction is better.
 * A figure "at the end" is that of the last simulated year; {@link Living} says how a dead tree
 * counts.
 */
public enum Metric {
  ALIVE_AT_END("Alive at the end", "1", true) {
    @Override
    double of(History history, int years, double discountRate) {
      return Living.alive(history, years) ? 1 : 0;
    }
  },
  YEARS_ALIVE("Years alive", "years", true) {
    @Override
    double of(History history, int years, double discountRate) {
      return sum(history, YearColumn.ALIVE, years);
    }
  },
  LEAF_AREA_MEAN_M2("Leaf area, mean of all years", "m²", true) {
    @Override
    double of(History history, int years, double discountRate) {
      return sum(history, YearColumn.LEAF_AREA_M2, years) / years;
    }
  },
  LEAF_AREA_END_M2("Leaf area at the end", "m²", true) {
    @Override
    double of(History history, int years, double discountRate) {
      return Living.value(history, YearColumn.LEAF_AREA_M2, years);
    }
  },
  RESERVE_FRACTION_LOWEST("Lowest reserve, share of its ceiling", "1", true) {
    @Override
    double of(History history, int years, double discountRate) {
      double lowest = Double.POSITIVE_INFINITY;
      for (int year = 1; year <= years; year++) {
        lowest = Math.min(lowest, Living.value(history, YearColumn.RESERVE_FRACTION, year));
      }
      return lowest;
    }
  },
  SPROUT_COUNT_HIGHEST("Most sprouts in any year", "number", false) {
    @Override
    double of(History history, int years, double discountRate) {
      double highest = 0;
      for (int year = 1; year <= years; year++) {
        highest = Math.max(highest, Living.value(history, YearColumn.SPROUT_COUNT, year));
      }
      return highest;
    }
  },
  OPEN_WOUND_END_CM2("Open wound at the end", "cm²", false) {
    @Override
    double of(History history, int years, double discountRate) {
      return Living.value(history, YearColumn.OPEN_WOUND_CM2, years);
    }
  },
  DECAY_AREA_FRACTION_END("Decay where the trunk is weakest, at the end", "1", false) {
    @Override
    double of(History history, int years, double discountRate) {
      return Living.value(history, YearColumn.DECAY_AREA_FRACTION, years);
    }
  },
  STRENGTH_LOSS_FRACTION_END("Strength lost where the trunk is weakest, at the end", "1", false) {
    @Override
    double of(History history, int years, double discountRate) {
      return Living.value(history, YearColumn.STRENGTH_LOSS_FRACTION, years);
    }
  },
  WALL_RATIO_END("Residual wall ratio t/R at the end", "number", true) {
    @Override
    double of(History history, int years, double discountRate) {
      return Living.value(history, YearColumn.WALL_RATIO, years);
    }
  },
  FAILURE_PROBABILITY_END("Failure probability at the end", "a year", false) {
    @Override
    double of(History history, int years, double discountRate) {
      return Living.value(history, YearColumn.FAILURE_PROBABILITY, years);
    }
  },
  CREW_HOURS("Crew hours", "h", false) {
    @Override
    double of(History history, int years, double discountRate) {
      return history.visits().stream().mapToDouble(row -> row.crewHours()).sum();
    }
  },
  COST_DISCOUNTED("Cost, discounted", "", false) {
    @Override
    double of(History history, int years, double discountRate) {
      return Cost.cumulative(history, years, discountRate)[years];
    }
  };

  private final String label;
  private final String unit;
  private final boolean moreIsBetter;

  Metric(String label, String unit, boolean moreIsBetter) {
    this.label = label;
    this.unit = unit;
    this.moreIsBetter = moreIsBetter;
  }

  /** The figure in one future; {@link Double#NaN} where it has no meaning. */
  abstract double of(History history, int years, double discountRate);

  /** The figure in one future, for tables of one's own; {@link Double#NaN} without a meaning. */
  public double figure(History history, int years, double discountRate) {
    return of(history, years, discountRate);
  }

  /** Name in the tidy file. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public String label() {
    return label;
  }

  /** Unit as printed; 1 for a share, empty for money in the scenario's currency. */
  public String unit() {
    return unit;
  }

  /**
   * The least difference worth a word, in the figure's unit: one sprout, one unit of money, half a
   * point of a share, half a square metre of leaf; our own choice.
   */
  public double worthMentioning() {
    return switch (unit) {
      case "1" -> 0.005;
      case "a year" -> 0.0005;
      case "m²" -> 0.5;
      default -> this == WALL_RATIO_END ? 0.005 : 1;
    };
  }

  public boolean moreIsBetter() {
    return moreIsBetter;
  }

  private static double sum(History history, YearColumn column, int years) {
    double sum = 0;
    for (int year = 1; year <= years; year++) {
      sum += Living.value(history, column, year);
    }
    return sum;
  }
}
