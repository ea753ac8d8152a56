package longbough.runner.limit;

import java.util.Locale;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.model.tree.MeasuredTree;

/** A way to take live foliage, from nothing up; the setting says how far it is gone, 0 to 1. */
public enum Way {
  THIN_EVENLY("thin evenly", "whole side branches, evenly over the crown") {
    @Override
    Operation at(double setting, MeasuredTree tree) {
      return new Operation.Thin(setting, Where.EVENLY, CutKind.REMOVAL);
    }
  },
  THIN_HEADING("thin by heading", "branches cut between laterals, evenly over the crown") {
    @Override
    Operation at(double setting, MeasuredTree tree) {
      return new Operation.Thin(setting, Where.EVENLY, CutKind.HEADING);
    }
  },
  THIN_INNER("thin the inside", "whole side branches, from the inside of the crown outward") {
    @Override
    Operation at(double setting, MeasuredTree tree) {
      return new Operation.Thin(setting, Where.INNER, CutKind.REMOVAL);
    }
  },
  THIN_TIPS("thin the tips", "whole side branches, from the outside of the crown inward") {
    @Override
    Operation at(double setting, MeasuredTree tree) {
      return new Operation.Thin(setting, Where.TIPS, CutKind.REMOVAL);
    }
  },
  RAISE("raise", "the lowest limbs off at the trunk") {
    @Override
    Operation at(double setting, MeasuredTree tree) {
      return new Operation.Raise(raisedToM(setting, tree), Double.NaN);
    }

    @Override
    String settingText(double setting, MeasuredTree tree) {
      return String.format(Locale.ROOT, "to %.1f m", raisedToM(setting, tree));
    }
  },
  REDUCE("reduce to laterals", "height and spread shortened alike, to side branches") {
    @Override
    Operation at(double setting, MeasuredTree tree) {
      double share = MOST_REDUCED * setting;
      return new Operation.Reduce(share, share, true);
    }

    @Override
    String settingText(double setting, MeasuredTree tree) {
      return reducedBy(setting);
    }
  },
  REDUCE_TO_STUBS("reduce to stubs", "height and spread shortened alike, wherever the cut falls") {
    @Override
    Operation at(double setting, MeasuredTree tree) {
      double share = MOST_REDUCED * setting;
      return new Operation.Reduce(share, share, false);
    }

    @Override
    String settingText(double setting, MeasuredTree tree) {
      return reducedBy(setting);
    }
  },
  ONE_SIDE("thin one side", "whole side branches, from the southern half of the crown only") {
    @Override
    Operation at(double setting, MeasuredTree tree) {
      return new Operation.OpenWindow(0, 2 * tree.heightM(), EAST_DEG, WEST_DEG, setting);
    }

    @Override
    String settingText(double setting, MeasuredTree tree) {
      return Math.round(PERCENT * setting) + " % of that side";
    }
  };

  /** Largest share of height and spread that a reduction is tried with. */
  private static final double MOST_REDUCED = 0.7;

  private static final double EAST_DEG = 90;
  private static final double WEST_DEG = 270;
  private static final double PERCENT = 100;

  private final String label;
  private final String meaning;

  Way(String label, String meaning) {
    this.label = label;
    this.meaning = meaning;
  }

  /** The operation at a setting above 0. */
  abstract Operation at(double setting, MeasuredTree tree);

  /** The setting in the operation's own measure; empty where that is the foliage taken. */
  String settingText(double setting, MeasuredTree tree) {
    return "";
  }

  /** Short name for tables and charts. */
  public String label() {
    return label;
  }

  /** The parameter that holds the trade's own limit for this way; empty where it has none. */
  String tradeParameter() {
    return switch (this) {
      case THIN_EVENLY, THIN_HEADING, THIN_INNER, THIN_TIPS -> "limit.thin_share";
      case RAISE -> "limit.raise_share_at_once";
      case REDUCE, REDUCE_TO_STUBS -> "limit.reduce_volume_share";
      case ONE_SIDE -> "";
    };
  }

  /** What is cut, in half a sentence. */
  public String meaning() {
    return meaning;
  }

  /** Name in the tidy file. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  private static double raisedToM(double setting, MeasuredTree tree) {
    return tree.crownBaseM() + setting * (tree.heightM() - tree.crownBaseM());
  }

  private static String reducedBy(double setting) {
    return "by " + Math.round(PERCENT * MOST_REDUCED * setting) + " %";
  }
}
