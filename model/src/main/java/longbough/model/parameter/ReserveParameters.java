package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of the reserve; each with unit, range and source in {@code parameters/reserve.csv}.
 *
 * @param floor share of the ceiling that can't be mobilised, 1
 * @param setPoint reserve over ceiling that the tree defends before it grows, 1
 * @param springSetPoint the same up to the longest days, 1
 * @param storageLeast share of surplus stored when the reserve is at its set point, 1
 * @param storageSlope rise of that share as the reserve falls to nothing, 1
 * @param releaseShare monthly share of what lies above the set point that goes into growth, 1
 * @param flushLeft share of what branches can hold that a flush leaves in them, 1
 * @param rootLivingShare least share of coarse roots that is living sapwood, 1
 * @param branchLivingShare share of branch wood that is living sapwood, 1
 * @param vigourShare reserve over its set point below which growth in length is held back, 1
 * @param ceilingFactor fullest store over the late-season concentration of the species files, 1
 * @param leafStore reserve in an evergreen's full leaves, share of dry mass, 1
 * @param leafSugar sugar that belongs to a deciduous leaf's cells and goes with its mass, share of
 *     dry mass, 1
 * @param leafDays days of assimilation that stand in leaves on its way out, days
 * @param exchange rate at which neighbouring stores even out, 1/month
 * @param youngShellM depth of bark and young wood in a stem that stores as branches do, m
 * @param startLeast reserve over ceiling of a dying tree at the start, 1
 * @param startSlope its rise with condition, 1
 * @param low reserve over ceiling below which the chain of events calls it low, 1
 */
public record ReserveParameters(
    double floor,
    double setPoint,
    double springSetPoint,
    double storageLeast,
    double storageSlope,
    double releaseShare,
    double flushLeft,
    double rootLivingShare,
    double branchLivingShare,
    double vigourShare,
    double ceilingFactor,
    double leafStore,
    double leafSugar,
    double leafDays,
    double exchange,
    double youngShellM,
    double startLeast,
    double startSlope,
    double low) {

  static ReserveParameters of(ParameterTable table) {
    return new ReserveParameters(
        table.value("reserve.floor"),
        table.value("reserve.set_point"),
        table.value("reserve.spring_set_point"),
        table.value("reserve.storage_least"),
        table.value("reserve.storage_slope"),
        table.value("reserve.release_share"),
        table.value("reserve.flush_left"),
        table.value("reserve.root_living_share"),
        table.value("reserve.branch_living_share"),
        table.value("reserve.vigour_share"),
        table.value("reserve.ceiling_factor"),
        table.value("reserve.evergreen_leaf_store"),
        table.value("reserve.leaf_sugar"),
        table.value("reserve.leaf_days"),
        table.value("reserve.exchange"),
        table.value("reserve.young_shell_cm") / 100,
        table.value("reserve.start_least"),
        table.value("reserve.start_slope"),
        table.value("reserve.low"));
  }

  /**
   * Largest concentration in the sapwood of a trunk with its bark, share of dry mass: its outermost
   * shell stores as branches do, so that a thin stem is a better store for its size than a thick
   * one.
   */
  public double stemMax(SpeciesParameters species, double radiusM, double sapwoodShare) {
    double inner = 1 - Math.min(1, youngShellM / radiusM);
    double young = Math.min(1, (1 - inner * inner) / sapwoodShare);
    double more = Math.max(0, species.reserveBranchMax() - species.reserveStemMax());
    return species.reserveStemMax() + young * more;
  }

  /**
   * What leaves hold beside the sugar on its way out, an evergreen's at most, share of dry mass.
   */
  public double leafMost(SpeciesParameters species) {
    return species.evergreen() ? leafStore : leafSugar;
  }

  /** The same of a mass of leaves, kg C. */
  public double leafCeilingKgC(ModelParameters p, double leafKgC) {
    double dryToSugar = p.carbon().sugarCarbon() / p.carbon().woodCarbon();
    return dryToSugar * ceilingFactor * leafMost(p.species()) * leafKgC;
  }
}
