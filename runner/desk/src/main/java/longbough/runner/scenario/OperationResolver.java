package longbough.runner.scenario;

import java.util.Locale;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.runner.scenario.written.WrittenOperation;
import longbough.runner.yaml.Plain;

/** Operations in the model's own units, with what was left out filled in. */
final class OperationResolver {

  private static final double CM_PER_M = 100;

  private final Notes notes;

  OperationResolver(Notes notes) {
    this.notes = notes;
  }

  Operation resolve(WrittenOperation of) {
    return switch (of.word()) {
      case "remove_deadwood" ->
          new Operation.RemoveDeadwood(number(of, "over_cm", "cm") / CM_PER_M);
      case "thin" ->
          new Operation.Thin(
              value(of, "share"),
              Where.valueOf(word(of, "where", "evenly").toUpperCase(Locale.ROOT)),
              cut(of));
      case "raise" -> new Operation.Raise(open(of, "to_height_m"), open(of, "to_live_crown_ratio"));
      case "open_window" ->
          new Operation.OpenWindow(
              value(of, "from_height_m"),
              value(of, "to_height_m"),
              value(of, "from_bearing_deg"),
              value(of, "to_bearing_deg"),
              value(of, "share"));
      case "reduce" ->
          new Operation.Reduce(
              of.number("height_share").or(0.0),
              of.number("spread_share").or(0.0),
              word(of, "to", "laterals").equals("laterals"));
      case "cut_back" ->
          new Operation.CutBack(
              value(of, "from_height_m"),
              value(of, "to_height_m"),
              of.number("from_bearing_deg").or(0.0),
              of.number("to_bearing_deg").or(0.0),
              open(of, "to_reach_m"),
              open(of, "share"));
      case "top" -> new Operation.Top(open(of, "at_height_m"), open(of, "at_height_share"));
      case "shear" -> new Operation.Shear(value(of, "depth_share"));
      case "strip_sprouts" -> new Operation.StripSprouts(number(of, "share", ""), cut(of));
      case "select_sprouts" -> new Operation.SelectSprouts(value(of, "keep_one_of"));
      case "restore_topped" -> new Operation.RestoreTopped(value(of, "keep_one_of"));
      default -> throw new IllegalArgumentException("no operation '" + of.word() + "'");
    };
  }

  private static double value(WrittenOperation of, String key) {
    return of.number(key).value();
  }

  private static double open(WrittenOperation of, String key) {
    return of.number(key).or(Double.NaN);
  }

  private double number(WrittenOperation of, String key, String unit) {
    if (of.number(key).present()) {
      return value(of, key);
    }
    double value = Presets.fallback(of.word() + "." + key);
    String taken = Plain.number(value) + (unit.isEmpty() ? "" : " " + unit);
    notes.add(of.word() + ": " + key + " not given: " + taken + " taken.");
    return value;
  }

  private CutKind cut(WrittenOperation of) {
    return CutKind.valueOf(word(of, "by", "removal").toUpperCase(Locale.ROOT));
  }

  private String word(WrittenOperation of, String key, String fallback) {
    if (!of.wordAt(key).present()) {
      notes.add(of.word() + ": " + key + " not given: " + fallback + " taken.");
    }
    return of.wordAt(key).or(fallback);
  }
}
