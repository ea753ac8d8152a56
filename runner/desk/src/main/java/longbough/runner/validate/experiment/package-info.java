/**
 * One small class for each experiment behind the published checks. An experiment answers one check
 * or a few that share a set-up.
 */
package longbough.runner.validate.experiment;
