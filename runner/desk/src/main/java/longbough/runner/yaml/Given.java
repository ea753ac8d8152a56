package longbough.runner.yaml;

/**
 * A value as its author gave it, or its absence, with the place that a message should point at.
 *
 * @param value the value, or null where none (or no usable one) was given
 * @param written whether the key was there, usable or not
 * @param field path of the key, e.g. {@code tree.height_m}
 * @param place where the value stands, or the block in which it is missing
 */
public record Given<T>(T value, boolean written, String field, Place place) {

  /** Nothing was given. */
  public static <T> Given<T> absent(String field, Place place) {
    return new Given<>(null, false, field, place);
  }

  /** Something was given; null where it can't be used, which has then been noted as a mistake. */
  static <T> Given<T> of(T value, String field, Place place) {
    return new Given<>(value, true, field, place);
  }

  public boolean present() {
    return value != null;
  }

  /** The given value, or the default. */
  public T or(T fallback) {
    return value == null ? fallback : value;
  }
}
