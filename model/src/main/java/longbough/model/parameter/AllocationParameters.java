package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of allocation and growth; each with unit, range and source in {@code
 * parameters/allocation.csv}.
 *
 * @param limbForm volume of a limb with its branches over base area times length, 1
 * @param limbShareOfTrunk limb base areas together over trunk area at the crown base, 1
 * @param buttSwell extra area growth at the ground, share of that at breast height, 1
 * @param buttHeightM height over which the swelling fades, m
 * @param extensionShare greatest share of the growth budget for height and limb length, 1
 * @param extensionMaxM greatest yearly growth of a limb in length, m
 * @param tipWoodShare wood of a limb's new length over base area times that length, 1
 * @param swayShare share of growth in thickness that sway in wind decides, 1
 * @param limbSwayShare strain of a limb in wind over that of a trunk under the same moment, 1
 * @param stressMost most that bending stress over its mean in the tree can do, 1
 * @param slendernessMax longest leader over its base diameter, 1
 * @param slenderestHeight height of forest-grown trees over open-grown ones of the same trunk, 1
 * @param leaderMost most that the leader's pace may be over that of the other shoots, 1
 * @param pipeYears years in which pipes of a limb that serve no leaves go out of use, years
 * @param headedExtension length growth of a headed limb over that of an intact one, 1
 * @param gapFilling yearly widening of a limb's share into a gap, share of its own, 1
 * @param crownFollow share of the distance to the leaf area that light supports covered a year, 1
 * @param budRecovery yearly return of missing shoots at full vigour in broadleaves, share of
 *     missing, 1
 * @param budRecoveryConifer the same in conifers, 1
 * @param shootGain most new shoots a year over the shoots there are, 1
 * @param lightLow light share at which leaves just repay their cost in an intolerant species, 1
 * @param lightLowTolerant the same in a fully tolerant species, 1
 * @param lightSpan light share over that from which a zone is filled, 1
 * @param densestLeaf leaf density in full light over the mean of the crown's space, at most, 1
 * @param crownVolumePower leaf area against crown volume at one trunk diameter, exponent, 1
 * @param ringMemoryYears years over which growth habit is remembered, years
 * @param woodFresh weight of this year in what the cambium is set to make, 1
 * @param woodStore sugar usually kept for later rings, over the ceiling of the reserve, 1
 * @param woodReserve reserve over its set point below which rings get nothing stored, 1
 * @param twigLoss share of its twigs that a broadleaf loses with all its leaves, 1
 * @param bareShoots power of the needle loss in the share of shoots left bare, which die, 1
 * @param hungryBuds share by which next year's shoots fall short where the leaves beside their buds
 *     were all lost, 1
 * @param flushSurge greatest new leaf cohort of an evergreen over its usual one, 1
 * @param limbsDecurrent first-order limbs of a spreading crown, count
 * @param limbsExcurrent first-order limbs of a crown with one leader, count
 * @param boleTaper loss of bole radius from the ground to the tree's height, share, 1
 * @param tipShare trunk area near the top over that at the crown base, 1
 * @param ringHabitM ring width that a healthy tree of unknown history is used to, m a year
 * @param ringHabitForestM the same of a tree walled in by its neighbours, m a year
 * @param ringHabitLeast the same of a dying tree over that, 1
 * @param conditionLeast bud fullness of a dying tree at the start, 1
 * @param conditionSlope rise of bud fullness with condition, 1
 */
public record AllocationParameters(
    double limbForm,
    double limbShareOfTrunk,
    double buttSwell,
    double buttHeightM,
    double extensionShare,
    double extensionMaxM,
    double tipWoodShare,
    double swayShare,
    double limbSwayShare,
    double stressMost,
    double slendernessMax,
    double slenderestHeight,
    double leaderMost,
    double pipeYears,
    double headedExtension,
    double gapFilling,
    double crownFollow,
    double budRecovery,
    double budRecoveryConifer,
    double shootGain,
    double lightLow,
    double lightLowTolerant,
    double lightSpan,
    double densestLeaf,
    double crownVolumePower,
    double ringMemoryYears,
    double woodFresh,
    double woodStore,
    double woodReserve,
    double twigLoss,
    double bareShoots,
    double hungryBuds,
    double flushSurge,
    double limbsDecurrent,
    double limbsExcurrent,
    double boleTaper,
    double tipShare,
    double ringHabitM,
    double ringHabitForestM,
    double ringHabitLeast,
    double conditionLeast,
    double conditionSlope) {

  static AllocationParameters of(ParameterTable table) {
    return new AllocationParameters(
        table.value("allocation.limb_form"),
        table.value("allocation.limb_share_of_trunk"),
        table.value("allocation.butt_swell"),
        table.value("allocation.butt_height_m"),
        table.value("allocation.extension_share"),
        table.value("allocation.extension_max_m"),
        table.value("allocation.tip_wood_share"),
        table.value("allocation.sway_share"),
        table.value("allocation.limb_sway_share"),
        table.value("allocation.stress_most"),
        table.value("allocation.slenderness_max"),
        table.value("allocation.slenderest_height"),
        table.value("allocation.leader_most"),
        table.value("allocation.pipe_years"),
        table.value("allocation.headed_extension"),
        table.value("allocation.gap_filling"),
        table.value("allocation.crown_follow"),
        table.value("allocation.bud_recovery"),
        table.value("allocation.bud_recovery_conifer"),
        table.value("allocation.shoot_gain"),
        table.value("allocation.light_low"),
        table.value("allocation.light_low_tolerant"),
        table.value("allocation.light_span"),
        table.value("allocation.densest_leaf"),
        table.value("allocation.crown_volume_power"),
        table.value("allocation.ring_memory_years"),
        table.value("allocation.wood_fresh"),
        table.value("allocation.wood_store"),
        table.value("allocation.wood_reserve"),
        table.value("allocation.twig_loss"),
        table.value("allocation.bare_shoots"),
        table.value("allocation.hungry_buds"),
        table.value("allocation.flush_surge"),
        table.value("allocation.limbs_decurrent"),
        table.value("allocation.limbs_excurrent"),
        table.value("allocation.bole_taper"),
        table.value("allocation.tip_share"),
        table.value("allocation.ring_habit_m"),
        table.value("allocation.ring_habit_forest_m"),
        table.value("allocation.ring_habit_least"),
        table.value("allocation.condition_least"),
        table.value("allocation.condition_slope"));
  }
}
