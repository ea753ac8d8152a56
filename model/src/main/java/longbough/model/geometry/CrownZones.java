package longbough.model.geometry;


/**
 * Where the three foliage zones of a limb lie: rings between 0, 0.45, 0.75 and 1 of its length, each
 * taken at the middle of its foliage. An assumption of our own that all processes share.
 */
public final class CrownZones {
  private static final double[] POSITION = {0.30, 0.60, 0.88};
  private static final double[] VOLUME = {0.2025, 0.36, 0.4375};

  private CrownZones() {}

  /** Distance of a zone's foliage from the trunk over the limb's length, 0 to 1. */
  public static double position(int zone) {
    return POSITION[zone];
  }

  /** Share of the limb's crown volume that a zone fills; the three sum to 1. */
  public static double volume(int zone) {
    return VOLUME[zone];
  }

}
