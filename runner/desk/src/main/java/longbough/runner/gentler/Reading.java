package longbough.runner.gentler;

import java.util.List;
import longbough.model.history.History;

/**
 * One plan in one future.
 *
 * @param byWish how far each wish is fulfilled, mean over the years looked at
 * @param met whether all are, in every such year
 * @param told whether the tree left alone lives in any of these years, so that there is anything to
 *     be told
 */
record Reading(History history, List<Double> byWish, boolean met, boolean told) {}
