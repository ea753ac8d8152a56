package longbough.shared.quantity;

/** A closed interval of plausible values. */
public record Range(double low, double high) {

  public Range {
    if (!(low <= high)) {
      throw new IllegalArgumentException("range from " + low + " to " + high + " is not a range");
    }
  }

  public double width() {
    return high - low;
  }

  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  /** The value moved to the nearer end where it lies outside. */
  public double clamp(double value) {
    return Math.min(high, Math.max(low, value));
  }
}
