/**
 * A batch as people read it: lines for the terminal, tidy files, and a page of its own with the
 * ranked list, its picture and the cautions.
 */
package longbough.runner.batch.page;
