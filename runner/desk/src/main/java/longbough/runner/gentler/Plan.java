package longbough.runner.gentler;

import longbough.model.pruning.Regime;

/**
 * A plan with what came of it.
 *
 * @param role why it is shown, e.g. "gentlest that gives the wish"
 * @param regime its visits
 * @param outcome over the futures
 */
public record Plan(String role, Regime regime, Outcome outcome) {}
