package longbough.runner.update;

/**
 * One figure of a later visit.
 *
 * @param line line in the file
 * @param year simulation year at whose end it holds
 * @param quantity what was measured
 * @param value in the quantity's unit; for alive 1 or 0
 * @param error standard error of the reading in the quantity's unit; NaN where the usual one holds
 * @param classWidth width of the range that a word stands for; 0 where the value is a number
 * @param word what the file calls it
 * @param written the value as written
 */
public record Measured(
    int line,
    int year,
    Quantity quantity,
    double value,
    double error,
    double classWidth,
    String word,
    String written) {}
