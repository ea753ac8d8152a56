/**
 * What is measured on finished histories: bands over futures, survival, cost, and paired
 * differences between regimes that met the same futures. Pure arithmetic, no files and no words.
 */
package longbough.runner.compare;
