package longbough.runner.validate.lab;

import longbough.model.state.Sprouts;

/** Sprouts on a cleared trunk, as foresters count them. */
public final class TrunkSprouts {

  private TrunkSprouts() {}

  /** Mean number from the ground up to a height at the end of a kept year. */
  public static double upTo(Played played, int year, double heightM) {
    return played.meanState(year, state -> upTo(state.sprouts, heightM));
  }

  /** The section that the height divides counts by its part. */
  private static double upTo(Sprouts sprouts, double heightM) {
    double sum = 0;
    for (int section = 0; section * Sprouts.SECTION_M < heightM; section++) {
      double part = Math.min(1, heightM / Sprouts.SECTION_M - section);
      sum += part * sprouts.count[Sprouts.trunkCohort(section * Sprouts.SECTION_M)];
    }
    return sum;
  }
}
