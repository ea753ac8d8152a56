/**
 * How many trees are still alive over the futures, with bands, and what the others died of:
 * survival curves and cumulative incidence by cause, as in any study of lifetimes.
 */
package longbough.runner.survival;
