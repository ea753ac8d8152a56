package longbough.runner.update;

import java.util.Locale;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;
import longbough.runner.validate.lab.LongestSprout;

/**
 * What can be measured on a tree, and how a played tree would have read. Readings are those at the
 * end of a simulated year; {@link Double#NaN} where the tree has nothing to measure.
 */
public enum Quantity {
  TRUNK_DIAMETER("trunk diameter", "cm", "growth", true) {
    @Override
    double read(History history, TreeState state, int year) {
      return history.value(YearColumn.DBH_CM, year);
    }
  },
  HEIGHT("height", "m", "height", true) {
    @Override
    double read(History history, TreeState state, int year) {
      return history.value(YearColumn.HEIGHT_M, year);
    }
  },
  /** Half of what the diameter grew by in that year. */
  RING_WIDTH("ring width", "mm", "growth", false) {
    @Override
    double read(History history, TreeState state, int year) {
      double grownCm =
          history.value(YearColumn.DBH_CM, year) - history.value(YearColumn.DBH_CM, year - 1);
      return MM_PER_CM * grownCm / 2;
    }
  },
  SPROUT_LENGTH("longest sprout", "m", "sprout_length", false) {
    @Override
    double read(History history, TreeState state, int year) {
      return LongestSprout.lengthM(state.sprouts);
    }
  },
  SPROUTS("sprouts", "number", "sprouts", false) {
    @Override
    double read(History history, TreeState state, int year) {
      return history.value(YearColumn.SPROUT_COUNT, year);
    }
  },
  OPEN_WOUND("open wound", "cm\u00b2", "open_wound", false) {
    @Override
    double read(History history, TreeState state, int year) {
      return history.value(YearColumn.OPEN_WOUND_CM2, year);
    }
  },
  /** Of the faces cut or torn since the start and still on the tree. */
  CLOSED_WOUND("closed share of new wounds", "%", "closed_wound", false) {
    @Override
    double read(History history, TreeState state, int year) {
      Wounds wounds = state.wounds;
      double face = 0;
      double open = 0;
      for (int w = 0; w < wounds.count; w++) {
        if (wounds.year[w] >= 1 && wounds.limb[w] != Wounds.GONE) {
          face += wounds.faceWidthM[w] * wounds.faceHeightM[w] * wounds.cuts[w];
          open +=
              wounds.open(w) ? wounds.openWidthM[w] * wounds.openHeightM[w] * wounds.cuts[w] : 0;
        }
      }
      return face > 0 ? PERCENT * Math.max(0, 1 - open / face) : Double.NaN;
    }
  },
  /** The share of the crown that roots and sapwood can no longer carry. */
  DIEBACK("dieback of the crown", "%", "dieback", false) {
    @Override
    double read(History history, TreeState state, int year) {
      return PERCENT * state.vitality.decline;
    }
  },
  ALIVE("alive", "", "alive", false) {
    @Override
    double read(History history, TreeState state, int year) {
      return history.value(YearColumn.ALIVE, year);
    }
  };

  private static final double MM_PER_CM = 10;
  private static final double PERCENT = 100;

  private final String label;
  private final String unit;
  private final String modelGroup;
  private final boolean sinceStart;

  Quantity(String label, String unit, String modelGroup, boolean sinceStart) {
    this.label = label;
    this.unit = unit;
    this.modelGroup = modelGroup;
    this.sinceStart = sinceStart;
  }

  abstract double read(History history, TreeState state, int year);

  /** Its name in the data files. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public String label() {
    return label;
  }

  /** Unit of its values; empty for yes or no. */
  public String unit() {
    return unit;
  }

  /** Quantities of one group share the model's discrepancy: a trunk and its rings grow as one. */
  String modelGroup() {
    return modelGroup;
  }

  /** Whether the model can be wrong only about what has changed since the start. */
  boolean sinceStart() {
    return sinceStart;
  }
}
