package longbough.runner.fit.search;

/**
 * The best point that a search tried.
 *
 * @param point the point in the unit box
 * @param value its value
 * @param tried how many points were tried
 * @param settled whether the search ended by itself and not because its budget was spent
 */
public record Optimum(double[] point, double value, int tried, boolean settled) {}
