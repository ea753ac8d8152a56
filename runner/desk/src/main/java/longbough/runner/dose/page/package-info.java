/**
 * Recovery or starvation as people read it: lines for the terminal and a page of its own, with
 * picture, table and cautions.
 */
package longbough.runner.dose.page;
