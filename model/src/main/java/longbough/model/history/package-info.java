/**
 * What one simulated tree leaves behind: a row a year, visits, wounds, dated events, and the carbon
 * ledger that must close every year. Written by the yearly cycle, read by everything that measures
 * or draws.
 */
package longbough.model.history;
