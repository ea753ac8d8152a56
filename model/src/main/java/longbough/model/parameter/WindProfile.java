package longbough.model.parameter;

import longbough.model.numeric.Fast;
import longbough.model.state.Trunk;

/**
 * Wind speed by height over the speed at 10 m, and its powers by station.
 *
 * <p>u(z) / u(10 m) = ln(z / z0) / ln(10 m / z0), with z height (m) and z0 roughness length (m):
 * the logarithmic profile over open country (strength check S14).
 */
public final class WindProfile {
  private static final double REFERENCE_HEIGHT_M = 10;

  private final double[] inLeaf = new double[Trunk.MAX_STATIONS];
  private final double[] leafless = new double[Trunk.MAX_STATIONS];

  private WindProfile() {}

  static WindProfile of(double roughnessM, double exponentInLeaf, double exponentLeafless) {
    WindProfile profile = new WindProfile();
    for (int station = 0; station < Trunk.MAX_STATIONS; station++) {
      double share = speedShare(station * Trunk.STATION_STEP_M, roughnessM);
      profile.inLeaf[station] = Fast.pow(share, exponentInLeaf);
      profile.leafless[station] = Fast.pow(share, exponentLeafless);
    }
    return profile;
  }

  /** Speed at a height over the speed at 10 m; 0 below the roughness length. */
  public static double speedShare(double heightM, double roughnessM) {
    if (heightM <= roughnessM) {
      return 0;
    }
    return Fast.log(heightM / roughnessM) / Fast.log(REFERENCE_HEIGHT_M / roughnessM);
  }

  /** Load at a station's height over the load at 10 m, in leaf. */
  public double inLeaf(int station) {
    return inLeaf[station];
  }

  /** Load at a station's height over the load at 10 m, leafless. */
  public double leafless(int station) {
    return leafless[station];
  }
}
