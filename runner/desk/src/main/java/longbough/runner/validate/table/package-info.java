/** The validation as tidy files for a program to read: the checks, and the open measurements. */
package longbough.runner.validate.table;
