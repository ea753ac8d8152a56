/**
 * What must come out of the processes together, though none of them says it: each test plays whole
 * trees under regimes and compares the outcome with publications or, where there are none, with the
 * trade.
 */
package longbough.model.emerge;
