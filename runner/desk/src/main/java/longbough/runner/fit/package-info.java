/**
 * Fits the parameters that the literature leaves free to the published checks, in the open: which
 * may be fitted, which checks train and which are kept apart, how a miss counts, and what came of
 * it. {@code search} looks for the best values, {@code file} writes them down.
 */
package longbough.runner.fit;
