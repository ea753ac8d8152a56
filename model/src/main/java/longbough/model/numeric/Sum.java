package longbough.model.numeric;

/**
 * Sum of the first numbers of an array, taken as four running sums that need not wait for one
 * another; their order is fixed, so that the bits are the same everywhere.
 */
public final class Sum {
  private static final int LANES = 4;

  private Sum() {}

  public static double of(double[] values, int count) {
    double a = 0;
    double b = 0;
    double c = 0;
    double d = 0;
    int i = 0;
    for (; i + LANES <= count; i += LANES) {
      a += values[i];
      b += values[i + 1];
      c += values[i + 2];
      d += values[i + 3];
    }
    for (; i < count; i++) {
      a += values[i];
    }
    return (a + b) + (c + d);
  }
}
