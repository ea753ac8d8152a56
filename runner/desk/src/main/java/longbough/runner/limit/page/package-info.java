/**
 * The limits of a tree as people read them: lines for the terminal and a page of its own, with
 * pictures, tables and cautions.
 */
package longbough.runner.limit.page;
