/**
 * A day's pruning: which visits fall due, what each operation did, how long it took, and which
 * published limits it passed. No process depends on this package.
 */
package longbough.model.visit;
