/**
 * Random streams that are keyed by seed, future, year and process instead of being drawn in turn.
 * Adding a process or a regime therefore changes nobody else's draws.
 */
package longbough.model.random;
