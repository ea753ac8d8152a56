/**
 * Results as tables: the tidy files with their manifest, the folder they are written to, and the
 * summary on the terminal. The same results always give the same bytes.
 */
package longbough.runner.table;
