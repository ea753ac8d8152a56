/**
 * Line charts over the years: what is shown (bands over futures, medians, visits), how each regime
 * looks in every chart, and two painters, one for picture files and one for light SVG with real
 * text.
 */
package longbough.runner.chart;
