package longbough.runner.drawing.look;

import java.util.Locale;

/** Numbers as words on a picture, the same in every locale. */
public final class Words {
  private Words() {}

  /** E.g. {@code 14.2}. */
  public static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** E.g. {@code 0.42}. */
  public static String twoDecimals(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  /** E.g. {@code 210}. */
  public static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  /** One decimal below ten, none from ten on. */
  public static String brief(double value) {
    return Math.abs(value) < 9.95 ? oneDecimal(value) : whole(value);
  }

  /** A fraction as per cent, e.g. {@code 18 %}. */
  public static String percent(double fraction) {
    return whole(100 * fraction) + " %";
  }
}
