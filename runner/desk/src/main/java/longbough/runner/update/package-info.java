/**
 * Coming back to a tree: what was measured on a later visit, how well each future foretold it, and
 * the forecast that is left when the futures are weighed by that. Reads, plays and weighs; words,
 * pages and files of it are made in {@code page}.
 */
package longbough.runner.update;
