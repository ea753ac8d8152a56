package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of sprouting; each with unit, range and source in {@code parameters/sprout.csv}.
 *
 * @param doseTolerance share of foliage lost that awakens nothing, 1
 * @param doseHalf share beyond the tolerance at which half of the buds answer, 1
 * @param headingGain share of the bank that full heading of a limb awakens, 1
 * @param doseGain share of the bank that a large dose awakens, 1
 * @param bareGain share of the bank that a bare, fully lit inner limb awakens a year, 1
 * @param bareHalf share of inner shoots lost at which half of that answer comes, 1
 * @param budgetShare greatest share of the growth budget that older sprouts take, 1
 * @param winterGain answer to a leafless cut over one in leaf, 1
 * @param vigourReserve reserve over ceiling at which vigour is half, 1
 * @param leafPerLength2 leaf area of a sprout over its length squared, m2/m2
 * @param firstSeason leaf area of a sprout over its first season, over that at the season's end, 1
 * @param woodPerLength3 wood of a sprout over its length cubed, kg C per m3
 * @param lengthening growth in length of an older sprout over its first year's, 1
 * @param lengtheningYears age at which growth in length has halved, years
 * @param thinning yearly share of sprouts that die unasked, 1
 * @param crowding extra yearly share that dies where sprouts carry more than the limb supports, 1
 * @param dyingSize mass of a sprout that dies over the mean, 1
 * @param trunkLeafMaxM2PerM most sprout leaf area that a metre of trunk carries, m2/m
 * @param bankReturn yearly refilling of a bank of buds, share of missing, 1
 * @param establishedYears age from which sprouts turn into branches, years
 * @param establishedShare yearly share of older sprouts that does, 1
 * @param reserveShare greatest share of the mobile reserve spent on one flush of sprouts, 1
 * @param heavy sprouts a tree whose coming is told in the chain of events, count
 */
public record SproutParameters(
    double doseTolerance,
    double doseHalf,
    double headingGain,
    double doseGain,
    double bareGain,
    double bareHalf,
    double budgetShare,
    double winterGain,
    double vigourReserve,
    double leafPerLength2,
    double firstSeason,
    double woodPerLength3,
    double lengthening,
    double lengtheningYears,
    double thinning,
    double crowding,
    double dyingSize,
    double trunkLeafMaxM2PerM,
    double bankReturn,
    double establishedYears,
    double establishedShare,
    double reserveShare,
    double heavy) {

  static SproutParameters of(ParameterTable table) {
    return new SproutParameters(
        table.value("sprout.dose_tolerance"),
        table.value("sprout.dose_half"),
        table.value("sprout.heading_gain"),
        table.value("sprout.dose_gain"),
        table.value("sprout.bare_gain"),
        table.value("sprout.bare_half"),
        table.value("sprout.budget_share"),
        table.value("sprout.winter_gain"),
        table.value("sprout.vigour_reserve"),
        table.value("sprout.leaf_per_length2"),
        table.value("sprout.first_season"),
        table.value("sprout.wood_per_length3"),
        table.value("sprout.lengthening"),
        table.value("sprout.lengthening_years"),
        table.value("sprout.thinning"),
        table.value("sprout.crowding"),
        table.value("sprout.dying_size"),
        table.value("sprout.trunk_leaf_max_m2_per_m"),
        table.value("sprout.bank_return"),
        table.value("sprout.established_years"),
        table.value("sprout.established_share"),
        table.value("sprout.reserve_share"),
        table.value("sprout.heavy"));
  }
}
