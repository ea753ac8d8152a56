/**
 * The published checks as small experiments: what a source reports, the band in which the model
 * should fall, and where it fell. A miss stays in the table with its explanation.
 */
package longbough.runner.validate;
