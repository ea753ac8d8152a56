/**
 * What a fit writes: its report, its tables, and the rows of the parameter files that it changes.
 */
package longbough.runner.fit.file;
