package longbough.runner.update;

/**
 * One future that was tried against the visit.
 *
 * @param future its number
 * @param logLikelihood of all that was measured; minus infinity where it is impossible
 * @param weight importance weight among all that were tried, by this alone
 * @param carried how many of the futures carried on came from it
 */
public record Tried(int future, double logLikelihood, double weight, int carried) {}
