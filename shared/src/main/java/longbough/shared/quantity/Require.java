package longbough.shared.quantity;

/** Checks that return the checked value. They refuse NaN and say what was found and allowed. */
public final class Require {

  private Require() {}

  public static double positive(String name, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be above 0 " + unit + ", found " + value);
    }
    return value;
  }

  public static double notNegative(String name, double value, String unit) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          name + " must not be below 0 " + unit + ", found " + value);
    }
    return value;
  }

  public static double fraction(String name, double value) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(name + " must lie in 0 to 1, found " + value);
    }
    return value;
  }
}
