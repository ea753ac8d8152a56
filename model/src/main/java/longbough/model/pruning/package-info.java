/**
 * What a regime is made of, in the words of the trade: visits, operations, cuts and their
 * placement. The processes never see a regime; they only meet what its cuts left behind.
 */
package longbough.model.pruning;
