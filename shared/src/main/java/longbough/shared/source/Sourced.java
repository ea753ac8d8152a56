package longbough.shared.source;

import longbough.shared.quantity.Range;

/**
 * A number that travels with its name, unit, plausible range, basis and source, so that a sweep can
 * turn any of them blindly and a report can say what a verdict rests on.
 *
 * @param name dotted name, e.g. {@code light.extinction_coefficient} or {@code
 *     species.leaf_mass_per_area_kg_m2}
 * @param value the value used unless a sweep or a future replaces it
 * @param unit unit as printed, {@code 1} for a plain number
 * @param range plausible range; futures draw from it where {@code sampled}
 * @param sampled whether each future draws its own value within the range
 * @param basis how well it is known
 * @param citation key into the bibliography, empty for common practice and assumptions
 * @param note one sentence: where in the source, or the reason for an assumption
 */
public record Sourced(
    String name,
    double value,
    String unit,
    Range range,
    boolean sampled,
    Basis basis,
    String citation,
    String note) {

  public Sourced {
    if (!(value >= range.low() && value <= range.high())) {
      throw new IllegalArgumentException(
          name
              + " = "
              + value
              + " "
              + unit
              + " lies outside its range "
              + range.low()
              + " to "
              + range.high());
    }
  }

  /** The same parameter with another value (kept inside the range). */
  public Sourced withValue(double other) {
    return new Sourced(name, other, unit, range, sampled, basis, citation, note);
  }
}
