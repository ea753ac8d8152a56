/**
 * What single cuts lead to: a bare trunk with one cut, by placement, species and size, played for
 * some years by the model's own closure, decay and strength.
 */
package longbough.runner.cuts;
