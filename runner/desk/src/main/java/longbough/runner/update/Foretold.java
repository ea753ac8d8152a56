package longbough.runner.update;

/**
 * What one future would have shown to the one who measured.
 *
 * @param values one for each figure, in the figures' order; NaN beyond the years played, or where
 *     the tree had nothing to measure
 * @param deathYear year in which the tree dies, or {@link Integer#MAX_VALUE} where it lives as far
 *     as it was played
 */
public record Foretold(double[] values, int deathYear) {}
