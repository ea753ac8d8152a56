package longbough.runner.yaml;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as a person would write them. */
public final class Plain {

  private static final int DECIMALS = 3;

  private Plain() {}

  /** Up to three decimals, without trailing zeros. */
  public static String number(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A fraction as per cent. */
  public static String percent(double fraction) {
    return number(Math.rint(fraction * 1000) / 10) + " %";
  }
}
