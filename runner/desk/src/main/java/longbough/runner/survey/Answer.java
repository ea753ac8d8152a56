package longbough.runner.survey;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import longbough.runner.sheet.SheetFaults;
import longbough.runner.yaml.KeyRow;
import longbough.runner.yaml.Nearest;
import longbough.runner.yaml.Plain;
import longbough.shared.quantity.Range;

/**
 * One value as somebody gave it, read and checked: either the text that a scenario takes, in metric
 * units, or what is wrong with it.
 *
 * @param yaml what goes into the scenario; empty where the value can't be used
 * @param found what was found
 * @param allowed what is allowed, in the unit of whoever gave it
 * @param mend how to mend it
 */
public record Answer(String yaml, String found, String allowed, String mend) {
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,9}(\\.\\d{0,12})?");
  private static final List<String> YES = List.of("yes", "y", "true", "1", "x");
  private static final List<String> NO = List.of("no", "n", "false", "0");
  private static final double PERCENT = 100;

  /** Digits kept after conversion: millimetres of a height, tenths of a millimetre of a trunk. */
  private static final int DECIMALS = 4;

  public boolean usable() {
    return !yaml.isEmpty();
  }

  /**
   * Reads a value that is not empty.
   *
   * @param decimalComma whether a comma may stand for the decimal point
   */
  public static Answer of(String text, Column column, Unit unit, boolean decimalComma) {
    return switch (column.kind()) {
      case FLAG -> flag(text, column);
      case TEXT, NAME, TREE -> text(text, column);
      case WORD -> word(text, column);
      case LEVEL ->
          looksLikeNumber(text) ? number(text, column, unit, decimalComma) : word(text, column);
      default -> number(text, column, unit, decimalComma);
    };
  }

  private static boolean looksLikeNumber(String text) {
    return !text.isEmpty() && "+-.,0123456789".indexOf(text.charAt(0)) >= 0;
  }

  /** How many of the scenario's unit one of the given unit is. */
  private static double factor(Column column, Unit unit) {
    return switch (column.kind()) {
      case GIRTH -> unit.metric() / Math.PI;
      case PERCENT -> 1 / PERCENT;
      default -> unit.metric();
    };
  }

  private static Answer number(String text, Column column, Unit unit, boolean decimalComma) {
    String plain = text;
    if (column.kind() == Kind.PERCENT && plain.endsWith("%")) {
      plain = plain.substring(0, plain.length() - 1).strip();
    }
    boolean comma = plain.contains(",");
    if (decimalComma && !plain.contains(".")) {
      plain = plain.replace(',', '.');
    }
    String allowed = allowed(column, unit);
    if (!NUMBER.matcher(plain).matches()) {
      String mend =
          comma && NUMBER.matcher(plain.replace(',', '.')).matches()
              ? "write a decimal point, not a comma"
              : unit == Unit.NONE
                  ? column.name() + ": " + column.meaning()
                  : "write the number alone";
      return wrong(SheetFaults.quoted(text), allowed, mend);
    }
    if (column.section().equals(Column.NOTED)) {
      return right(plain);
    }
    double value = Double.parseDouble(plain) * factor(column, unit);
    double rounded = rounded(value);
    Range range = column.row().range();
    if (!range.contains(rounded)) {
      return wrong(text, allowed, column.heading(unit) + ": " + column.meaning());
    }
    return right(BigDecimal.valueOf(rounded).stripTrailingZeros().toPlainString());
  }

  private static double rounded(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).doubleValue();
  }

  /** What may stand in a column, in the unit given. */
  public static String allowed(Column column, Unit unit) {
    if (column.kind() == Kind.FLAG) {
      return "yes or no";
    }
    if (!column.inScenario()) {
      return column.kind() == Kind.TEXT ? "text" : "a number";
    }
    KeyRow row = column.row();
    String words = String.join(", ", row.words());
    if (column.kind() == Kind.WORD) {
      return words;
    }
    if (column.kind() == Kind.TEXT) {
      return "text of up to " + Plain.number(row.range().high()) + " characters";
    }
    double factor = factor(column, unit);
    String unitWord = column.kind() == Kind.PERCENT ? "%" : unit.word();
    String span =
        Plain.number(Math.ceil(100 * row.range().low() / factor) / 100)
            + " to "
            + Plain.number(Math.floor(100 * row.range().high() / factor) / 100)
            + (unitWord.isEmpty() ? "" : " " + unitWord);
    return column.kind() == Kind.LEVEL ? words + ", or " + span : span;
  }

  private static Answer word(String text, Column column) {
    List<String> words = column.row().words();
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[ -]+", "_");
    if (words.contains(plain)) {
      return right(plain);
    }
    String nearest = Nearest.of(plain, words);
    return wrong(
        SheetFaults.quoted(text),
        allowed(column, Unit.NONE),
        Nearest.plausible(plain, nearest)
            ? "did you mean '" + nearest + "'?"
            : column.name() + ": " + column.meaning());
  }

  private static Answer flag(String text, Column column) {
    String plain = text.toLowerCase(Locale.ROOT);
    if (YES.contains(plain)) {
      return right("true");
    }
    return NO.contains(plain)
        ? right("false")
        : wrong(SheetFaults.quoted(text), "yes or no", column.name() + ": " + column.meaning());
  }

  private static Answer text(String text, Column column) {
    if (column.inScenario() && text.length() > column.row().range().high()) {
      return wrong(
          "text of " + text.length() + " characters", allowed(column, Unit.NONE), "shorten it");
    }
    return right(quoted(text));
  }

  /** Text as YAML takes it whatever stands in it. */
  public static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private static Answer right(String yaml) {
    return new Answer(yaml, "", "", "");
  }

  private static Answer wrong(String found, String allowed, String mend) {
    return new Answer("", found, allowed, mend);
  }
}
