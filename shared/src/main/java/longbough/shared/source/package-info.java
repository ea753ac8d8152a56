/**
 * Numbers that carry their unit, range, basis and source, and the bibliography behind them. The
 * data files under {@code longbough/parameters} and {@code longbough/bibliography} are read here.
 */
package longbough.shared.source;
