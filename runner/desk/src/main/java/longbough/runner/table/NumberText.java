package longbough.runner.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as text for files: the fewest digits that read back as the same number, the nearest such
 * number, whatever the locale and the Java version; empty where there is no number.
 */
public final class NumberText {
  private static final double EXACT_INTEGERS = 1L << 53;

  /** Most digits a double needs. */
  private static final int MOST_DIGITS = 17;

  private NumberText() {}

  public static String of(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return "";
    }
    if (value == Math.rint(value) && Math.abs(value) < EXACT_INTEGERS) {
      return Long.toString((long) value);
    }
    return plain(shortest(value));
  }

  // The library's own text may carry digits too many before Java 19, so it is only the first guess.
  private static BigDecimal shortest(double value) {
    BigDecimal exact = new BigDecimal(value);
    int digits = Math.min(MOST_DIGITS, new BigDecimal(Double.toString(value)).precision());
    BigDecimal best = round(exact, digits);
    while (digits > 1) {
      BigDecimal shorter = round(exact, digits - 1);
      if (shorter.doubleValue() != value) {
        break;
      }
      best = shorter;
      digits--;
    }
    return best.stripTrailingZeros();
  }

  private static BigDecimal round(BigDecimal exact, int digits) {
    return exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
  }

  private static String plain(BigDecimal value) {
    int exponent = value.precision() - value.scale() - 1;
    return exponent >= -7 && exponent < 21 ? value.toPlainString() : value.toString();
  }
}
