/**
 * Advice as people read it: lines for the terminal and a page of its own, with each plan in a
 * sentence, table, picture, drawings and cautions.
 */
package longbough.runner.gentler.page;
