package longbough.model.history;

import java.util.List;
import longbough.model.pruning.Season;

/**
 * What one operation of one visit did.
 *
 * @param year simulation year
 * @param season season of the visit
 * @param operation its word
 * @param foliageRemovedFraction live leaf area removed over live leaf area before, 0 to 1
 * @param cuts number of cuts
 * @param largestCutM diameter of the largest cut, m
 * @param woundM2 wound area opened, m2
 * @param crewHours working hours of the crew
 * @param cost in the scenario's currency, not discounted
 * @param cutsByClass cuts of under 2, 2-5, 5-10, 10-20 and over 20 cm
 * @param warnings published limits that were passed, as sentences
 */
public record VisitRow(
    int year,
    Season season,
    String operation,
    double foliageRemovedFraction,
    int cuts,
    double largestCutM,
    double woundM2,
    double crewHours,
    double cost,
    int[] cutsByClass,
    List<String> warnings) {}
