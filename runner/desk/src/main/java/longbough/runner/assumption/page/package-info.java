/**
 * What a verdict leans on as people read it: lines for the terminal and a page of its own, with
 * picture, tables and cautions.
 */
package longbough.runner.assumption.page;
