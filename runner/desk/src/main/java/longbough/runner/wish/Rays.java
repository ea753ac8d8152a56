package longbough.runner.wish;

import java.util.ArrayList;
import java.util.List;

/** The bundle of rays along which a view or a light is read; metres east, north, up. */
final class Rays {
  private static final int ACROSS = 9;
  private static final int UPWARD = 6;
  private static final double HALF_WIDTH_DEG = 45;
  private static final double LOWEST_DEG = 10;
  private static final double HIGHEST_DEG = 70;

  private record Ray(double[] from, double[] direction) {}

  private final List<Ray> rays = new ArrayList<>();

  private Rays() {}

  /** Level rays outward from the trunk's axis, evenly over the sector and the height band. */
  static Rays of(Wish.View view) {
    Rays bundle = new Rays();
    for (int i = 0; i < ACROSS; i++) {
      double bearing = view.sector().fromDeg() + view.sector().widthDeg() * (i + 0.5) / ACROSS;
      for (int j = 0; j < UPWARD; j++) {
        double part = (j + 0.5) / UPWARD;
        double height = view.fromHeightM() + part * (view.toHeightM() - view.fromHeightM());
        bundle.add(new double[] {0, 0, height}, bearing, 0);
      }
    }
    return bundle;
  }

  /**
   * Rays from the window into the quarter turn about the tree, from a tenth of a right angle above
   * the horizon up to 70 degrees, each for the same part of the sky's height.
   */
  static Rays of(Wish.Light light) {
    Rays bundle = new Rays();
    double turn = StrictMath.toRadians(light.bearingDeg());
    double[] window = {
      light.distanceM() * StrictMath.sin(turn),
      light.distanceM() * StrictMath.cos(turn),
      light.heightM()
    };
    double towardsTree = light.bearingDeg() + 180;
    for (int i = 0; i < ACROSS; i++) {
      double aside = HALF_WIDTH_DEG * (2 * (i + 0.5) / ACROSS - 1);
      for (int j = 0; j < UPWARD; j++) {
        double steep = LOWEST_DEG + (HIGHEST_DEG - LOWEST_DEG) * (j + 0.5) / UPWARD;
        bundle.add(window, towardsTree + aside, steep);
      }
    }
    return bundle;
  }

  /** Mean share of light over the rays. */
  double through(Clumps clumps) {
    double sum = 0;
    for (Ray ray : rays) {
      sum += clumps.through(ray.from(), ray.direction());
    }
    return sum / rays.size();
  }

  private void add(double[] from, double bearingDeg, double steepDeg) {
    double bearing = StrictMath.toRadians(bearingDeg);
    double steep = StrictMath.toRadians(steepDeg);
    double level = StrictMath.cos(steep);
    double[] direction = {
      level * StrictMath.sin(bearing), level * StrictMath.cos(bearing), StrictMath.sin(steep)
    };
    rays.add(new Ray(from, direction));
  }
}
