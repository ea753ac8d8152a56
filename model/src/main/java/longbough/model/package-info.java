/**
 * The pure yearly core: start at the simulation, which plays one tree through the years. Nothing
 * here reads a file, a clock, the console or the locale; everything comes in as immutable input and
 * goes out as history.
 */
package longbough.model;
