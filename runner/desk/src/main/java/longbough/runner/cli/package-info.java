/**
 * The command line: the root command, the one list of subcommands, and what a failure looks like to
 * the person at the keyboard. One class per command; the work itself is done in the other packages.
 */
package longbough.runner.cli;
