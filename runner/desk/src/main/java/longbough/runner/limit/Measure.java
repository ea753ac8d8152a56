package longbough.runner.limit;

import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.runner.compare.Living;

/** What is read in one future of a pruned tree, against the same tree left alone where needed. */
enum Measure {
  /** Largest share of the leaf area that stands on sprouts. */
  SPROUTING {
    @Override
    double of(History pruned, History alone, int from, int years) {
      double most = 0;
      for (int year = 1; year <= years && Living.alive(pruned, year); year++) {
        double leaf = pruned.value(YearColumn.LEAF_AREA_M2, year);
        double sprouts = pruned.value(YearColumn.SPROUT_LEAF_AREA_M2, year);
        most = Math.max(most, leaf > 0 ? sprouts / leaf : 0);
      }
      return most;
    }
  },
  /** Lowest reserve in autumn over its ceiling; a tree that dies has none. */
  RESERVE {
    @Override
    double of(History pruned, History alone, int from, int years) {
      double lowest = 1;
      for (int year = 1; year <= years; year++) {
        lowest = Math.min(lowest, Living.value(pruned, YearColumn.RESERVE_FRACTION, year));
      }
      return lowest;
    }
  },
  /**
   * Diameter grown in the whole growing seasons after the visit over that of the tree left alone in
   * the same future; a tree that dies has grown nothing, and 1 where the tree left alone dies or
   * doesn't grow.
   */
  GROWTH {
    @Override
    double of(History pruned, History alone, int from, int years) {
      if (!Living.alive(alone, years) || !(grownCm(alone, from, years) > 0)) {
        return 1;
      }
      return Living.alive(pruned, years)
          ? grownCm(pruned, from, years) / grownCm(alone, from, years)
          : 0;
    }
  },
  /** Open wound over the section of the trunk at breast height as measured. */
  CLOSURE {
    @Override
    double of(History pruned, History alone, int from, int years) {
      int year = Math.min(years, lastAlive(pruned, years));
      double radiusCm = pruned.value(YearColumn.DBH_CM, 0) / 2;
      return pruned.value(YearColumn.OPEN_WOUND_CM2, year) / (Math.PI * radiusCm * radiusCm);
    }
  },
  /** Most bending strength lost where the trunk is weakest, while the tree lives. */
  STRENGTH {
    @Override
    double of(History pruned, History alone, int from, int years) {
      double most = 0;
      for (int year = 0; year <= lastAlive(pruned, years); year++) {
        most = Math.max(most, pruned.value(YearColumn.STRENGTH_LOSS_FRACTION, year));
      }
      return most;
    }
  },
  /** 1 where the tree lives at the end, 0 where it is dead. */
  SURVIVAL {
    @Override
    double of(History pruned, History alone, int from, int years) {
      return Living.alive(pruned, years) ? 1 : 0;
    }
  };

  /**
   * The reading up to a year.
   *
   * @param from the year at whose end the first whole growing season after the visit lies ahead
   * @param years the last year that is read
   */
  abstract double of(History pruned, History alone, int from, int years);

  private static double grownCm(History history, int from, int years) {
    return history.value(YearColumn.DBH_CM, years) - history.value(YearColumn.DBH_CM, from);
  }

  private static int lastAlive(History history, int years) {
    int year = years;
    while (year > 0 && !Living.alive(history, year)) {
      year--;
    }
    return year;
  }
}
