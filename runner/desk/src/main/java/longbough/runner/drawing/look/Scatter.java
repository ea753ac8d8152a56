package longbough.runner.drawing.look;

/**
 * Irregularity that is always the same for the same thing: a number from 0 to 1 that depends only
 * on whole numbers that name the thing (limb, zone, which leaf). So a limb keeps its look from year
 * to year and regime to regime.
 */
public final class Scatter {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private Scatter() {}

  /** From 0 up to but not including 1. */
  public static double unit(int a, int b, int c) {
    long mixed = mix(mix(mix(a + GOLDEN) + b * GOLDEN) + c * GOLDEN);
    return (mixed >>> 11) * 0x1.0p-53;
  }

  /** From -1 up to but not including 1. */
  public static double around(int a, int b, int c) {
    return 2 * unit(a, b, c) - 1;
  }

  /** A whole number close to the value; rounded up as often as its fraction says. */
  public static int whole(double value, int a, int b) {
    return (int) Math.floor(Math.max(0, value) + unit(a, b, -1));
  }

  private static long mix(long bits) {
    long z = bits;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
