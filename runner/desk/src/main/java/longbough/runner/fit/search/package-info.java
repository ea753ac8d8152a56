/**
 * Looks for the lowest value of a function within a box by trying points; knows nothing of trees.
 */
package longbough.runner.fit.search;
