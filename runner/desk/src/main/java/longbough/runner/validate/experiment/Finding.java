package longbough.runner.validate.experiment;

import java.util.List;

/**
 * What an experiment found for one check.
 *
 * @param check its id
 * @param got what the model gave, with unit, as printed, e.g. {@code 0.91}
 * @param expected the band or claim it was held against, as printed
 * @param inBand whether the published figure was met within the check's own tolerance
 * @param rightDirection whether the weaker claim of direction holds
 * @param setUp one sentence: which trees, how many futures, what was simplified
 * @param readings the numbers behind the verdict with their bands; none where a claim has none
 */
public record Finding(
    String check,
    String got,
    String expected,
    boolean inBand,
    boolean rightDirection,
    String setUp,
    List<Reading> readings) {

  /** A finding whose verdict rests on no number. */
  public Finding(
      String check,
      String got,
      String expected,
      boolean inBand,
      boolean rightDirection,
      String setUp) {
    this(check, got, expected, inBand, rightDirection, setUp, List.of());
  }
}
