package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of lasting stress; each with unit, range and source in {@code parameters/decline.csv}.
 *
 * @param startPower power of what a tree lacks in condition that gives its decline at the start, 1
 * @param onset yearly chance that a lasting ailment takes hold of a vigorous tree, 1/year
 * @param onsetWeak rise of that chance in a tree without vigour, times the chance, 1
 * @param pace yearly share of the sound crown that a full ailment takes in broadleaves, 1/year
 * @param paceConifer the same in conifers, 1/year
 * @param walling yearly share of an ailment that a vigorous broadleaf walls off, 1/year
 * @param wallingConifer the same in conifers, 1/year
 * @param healing yearly rate at which a vigorous tree makes its damage good, 1/year
 * @param hunger yearly share of the sound crown lost at the deadly reserve, 1/year
 * @param starvedRoots yearly share of the sound crown lost where a tree whose rings have stopped
 *     puts out a full second canopy, 1/year
 * @param shortGrowth ring width over habit below which a second canopy starves the roots, 1
 * @param poorGrowth ring width over habit below which growth is too poor to outlive a drought, 1
 * @param poorYears rings that are looked at, years
 * @param droughtLoss yearly share of the sound crown lost to a drought that stops assimilation, 1
 * @param droughtBorne drought that leaves no lasting damage, share of assimilation lost, 1
 * @param droughtTwigs share of the twigs lost to a drought that stops assimilation, 1
 * @param droughtTwigsConifer the same in conifers, 1
 * @param thirst share of assimilation that a tree in full decline loses besides its leaves, 1
 * @param hiddenShare share of the crown that an ailment leaves thirsty before it shows, over the
 *     ailment, 1
 * @param rootLoss yearly share of the sound crown lost where the whole root plate is cut, 1/year
 */
public record DeclineParameters(
    double startPower,
    double onset,
    double onsetWeak,
    double pace,
    double paceConifer,
    double walling,
    double wallingConifer,
    double healing,
    double hunger,
    double starvedRoots,
    double shortGrowth,
    double poorGrowth,
    double poorYears,
    double droughtLoss,
    double droughtBorne,
    double droughtTwigs,
    double droughtTwigsConifer,
    double thirst,
    double hiddenShare,
    double rootLoss) {

  static DeclineParameters of(ParameterTable table) {
    return new DeclineParameters(
        table.value("decline.start_power"),
        table.value("decline.onset"),
        table.value("decline.onset_weak"),
        table.value("decline.pace"),
        table.value("decline.pace_conifer"),
        table.value("decline.walling"),
        table.value("decline.walling_conifer"),
        table.value("decline.healing"),
        table.value("decline.hunger"),
        table.value("decline.starved_roots"),
        table.value("decline.short_growth"),
        table.value("decline.poor_growth"),
        table.value("decline.poor_years"),
        table.value("decline.drought_loss"),
        table.value("decline.drought_borne"),
        table.value("decline.drought_twigs"),
        table.value("decline.drought_twigs_conifer"),
        table.value("decline.thirst"),
        table.value("decline.hidden_share"),
        table.value("decline.root_loss"));
  }
}
