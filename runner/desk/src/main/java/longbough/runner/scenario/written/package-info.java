/**
 * A scenario as its author wrote it: what was given, in the units in which it was given, each value
 * with its place in the file. Nothing is filled in here.
 */
package longbough.runner.scenario.written;
