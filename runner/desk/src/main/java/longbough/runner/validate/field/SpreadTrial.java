package longbough.runner.validate.field;

import java.util.List;

/**
 * One quantity in several groups.
 *
 * @param id short name
 * @param title what is measured
 * @param unit its unit, or empty
 * @param groups the groups, at least one
 * @param how how it was measured and what the model's value is
 * @param source the full source of the measurements
 */
public record SpreadTrial(
    String id, String title, String unit, List<Spread> groups, String how, String source) {}
