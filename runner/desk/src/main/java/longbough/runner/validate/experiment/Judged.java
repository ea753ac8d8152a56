package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;

/** Writes findings: a number against its check's band, or a claim that holds or does not. */
final class Judged {
  private final Check check;
  private final String setUp;

  Judged(Check check, String setUp) {
    this.check = check;
    this.setUp = setUp;
  }

  /** One number against the check's own band. */
  Finding number(double got, boolean rightDirection) {
    return claim(
        (f("%.3g", got) + " " + unit()).trim(),
        band(),
        check.holds(got),
        rightDirection,
        check.readings(got));
  }

  /** One number against the check's own band, with more to say about it. */
  Finding number(double got, String more, boolean rightDirection) {
    return claim(
        (f("%.3g", got) + " " + unit()).trim() + " (" + more + ")",
        band(),
        check.holds(got),
        rightDirection,
        check.readings(got));
  }

  Finding claim(String got, String expected, boolean inBand, boolean rightDirection) {
    return claim(got, expected, inBand, rightDirection, List.of());
  }

  /** A claim with the numbers behind it. */
  Finding claim(
      String got, String expected, boolean inBand, boolean rightDirection, List<Reading> readings) {
    return new Finding(check.id(), got.trim(), expected, inBand, rightDirection, setUp, readings);
  }

  /** A claim of direction alone. */
  Finding claim(String got, boolean holds) {
    return claim(got, check.direction(), holds, holds);
  }

  private String unit() {
    return check.unit().equals("ratio") || check.unit().equals("fraction") ? "" : check.unit();
  }

  private String band() {
    String low = Double.isNaN(check.low()) ? "" : text(check.low());
    String high = Double.isNaN(check.high()) ? "" : text(check.high());
    String words =
        low.isEmpty()
            ? "at most " + high
            : high.isEmpty() ? "at least " + low : low.equals(high) ? low : low + " to " + high;
    return (words + " " + unit()).trim() + "; " + check.direction();
  }

  private static String text(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  static String f(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
