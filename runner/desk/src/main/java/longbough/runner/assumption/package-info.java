/**
 * Which assumptions a verdict leans on: every parameter with a range is set to either end of it,
 * the others left as they are, and the regimes are compared again over the same futures. Plays and
 * counts; tables, charts and pages of it are made elsewhere.
 */
package longbough.runner.assumption;
