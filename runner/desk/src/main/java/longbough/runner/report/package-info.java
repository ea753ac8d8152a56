/**
 * The report: one self-contained page that a client can be handed, opens from disk without a
 * network and prints well. Everything that comes from a scenario is escaped.
 */
package longbough.runner.report;
