package longbough.model.random;

/**
 * Counter-based random numbers: the n-th draw of a stream depends only on seed, member, year,
 * process name and n, so that adding a process or a regime changes nobody else's draws. The mixing
 * function is the 64-bit finalizer of SplitMix64 (Steele G.L., Lea D., Flood C.H. 2014. Fast
 * splittable pseudorandom number generators. OOPSLA '14, doi 10.1145/2660193.2660195).
 */
public final class RandomStream {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final double UNIT = 0x1.0p-53;

  private long key;
  private long counter;

  /** Starts the stream of one process in one year of one future. */
  public void start(long seed, int member, int year, String process) {
    long k = mix(seed + GOLDEN);
    k = mix(k ^ (member + 1L) * 0xD1B54A32D192ED03L);
    k = mix(k ^ (year + 1L) * 0xABC98388FB8FAC03L);
    key = mix(k ^ process.hashCode() * 0x8CB92BA72F3D8DD7L);
    counter = 0;
  }

  /** Uniform in (0, 1). */
  public double uniform() {
    counter++;
    long bits = mix(key + counter * GOLDEN);
    return ((bits >>> 11) + 0.5) * UNIT;
  }

  /**
   * Uniform in (0, 1) at a fixed place of the stream, without moving on: for draws that belong to a
   * thing (this limb) and not to the order in which things happen.
   *
   * @param place 0 or more
   */
  public double uniformAt(long place) {
    long bits = mix(~key + (place + 1) * GOLDEN);
    return ((bits >>> 11) + 0.5) * UNIT;
  }

  /** Standard normal by inversion (one uniform a draw keeps streams aligned). */
  public double normal() {
    return NormalQuantile.of(uniform());
  }

  /** Standard normal at a fixed place of the stream, without moving on. */
  public double normalAt(long place) {
    return NormalQuantile.of(uniformAt(place));
  }

  public boolean chance(double probability) {
    return uniform() < probability;
  }

  private static long mix(long z) {
    long x = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    x = (x ^ (x >>> 27)) * 0x94D049BB133111EBL;
    return x ^ (x >>> 31);
  }
}
