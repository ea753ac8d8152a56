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
 * @param flushShare greatest share of the mobile reserve that one month's flush may take, 1
 * @param rootLivingShare least share of coarse roots that is living sapwood, 1
 * @param branchLivingShare share of branch wood that is living sapwood, 1
 * @param vigourShare reserve over its set point below which growth in length is held back, 1
 * @param ceilingFactor fullest store over the late-season concentration of the species files, 1
 * @param evergreenLeafStore reserve in an evergreen's leaves, share of dry mass, 1
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
    double flushShare,
    double rootLivingShare,
    double branchLivingShare,
    double vigourShare,
    double ceilingFactor,
    double evergreenLeafStore,
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
        table.value("reserve.flush_share"),
        table.value("reserve.root_living_share"),
        table.value("reserve.branch_living_share"),
        table.value("reserve.vigour_share"),
        table.value("reserve.ceiling_factor"),
        table.value("reserve.evergreen_leaf_store"),
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

  /** Reserve that leaves hold over the winter, share of dry mass: none where they fall. */
  public double leafStore(SpeciesParameters species) {
    return species.evergreen() ? evergreenLeafStore : 0;
  }
}
