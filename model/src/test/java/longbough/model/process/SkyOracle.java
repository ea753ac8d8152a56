package longbough.model.process;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Slow, plain reckoning of the light that a grid crown intercepts: beams from every elevation
 * through every point of the crown's shadow, each losing 1 - exp(-depth). Shares no path, direction
 * or sampling point with {@link LightField}; only the leaf area by cell is the same.
 */
final class SkyOracle {
  private static final int ELEVATIONS = 16;
  private static final int ACROSS = 24;
  private static final int ALONG = 24;
  private static final int STEPS = 400;

  private SkyOracle() {}

  /**
   * Light intercepted, as the area of open flat ground that receives as much, m2. The flux on flat
   * ground from below elevation e is sin(e)^p of all, so that of a band is p s^(p-1) ds with s =
   * sin(e), and what a beam carries across itself is that over s.
   */
  static double interceptedM2(CrownLight light, double p, double k) {
    GaussIntegrator gauss = new GaussIntegratorFactory().legendre(ELEVATIONS, 0, 1);
    return gauss.integrate(s -> p * Math.pow(s, p - 2) * beams(light, s, k));
  }

  /** Integral of 1 - exp(-depth) over the plane across the beams of one elevation, m2. */
  private static double beams(CrownLight light, double sin, double k) {
    double cos = Math.sqrt(1 - sin * sin);
    double height = light.topM - light.bottomM;
    double radius = light.radiusM;
    double width = height * cos + 2 * radius * sin;
    double sum = 0;
    for (int i = 0; i < ACROSS; i++) {
      double y = radius * (i + 0.5) / ACROSS;
      for (int j = 0; j < ALONG; j++) {
        double v = width * ((j + 0.5) / ALONG - 0.5);
        sum += 1 - Math.exp(-k * depth(light, y, v, sin, cos));
      }
    }
    return sum * 2 * radius * width / (ACROSS * ALONG);
  }

  /**
   * Leaf area density along one beam that passes y beside the axis and v above the middle, m2/m2.
   */
  private static double depth(CrownLight light, double y, double v, double sin, double cos) {
    double height = light.topM - light.bottomM;
    double radius = light.radiusM;
    double reach = Math.sqrt(height * height / 4 + radius * radius);
    double step = 2 * reach / STEPS;
    double sum = 0;
    for (int n = 0; n < STEPS; n++) {
      double t = (n + 0.5) * step - reach;
      double x = t * cos - v * sin;
      double z = t * sin + v * cos + height / 2;
      double r = Math.sqrt(x * x + y * y);
      if (z >= 0 && z < height && r < radius) {
        int ring = (int) (r / radius * CrownLight.RINGS);
        int cell = (int) (z / height * CrownLight.LAYERS) * CrownLight.RINGS + ring;
        double volume = Math.PI * radius * radius * height * GridCrowns.volumeShare(cell);
        sum += light.leafAreaM2[cell] / volume * step;
      }
    }
    return sum;
  }
}
