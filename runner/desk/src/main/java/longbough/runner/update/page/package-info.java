/**
 * A forecast before and after a visit as people read it: lines for the terminal, tables as files,
 * and a page of its own with pictures and cautions.
 */
package longbough.runner.update.page;
