package longbough.runner.validate.experiment;

/**
 * What an experiment found for one check.
 *
 * @param check its id
 * @param got what the model gave, with unit, as printed, e.g. {@code 0.91}
 * @param expected the band or claim it was held against, as printed
 * @param inBand whether the published figure was met within the check's own tolerance
 * @param rightDirection whether the weaker claim of direction holds
 * @param setUp one sentence: which trees, how many futures, what was simplified
 */
public record Finding(
    String check,
    String got,
    String expected,
    boolean inBand,
    boolean rightDirection,
    String setUp) {}
