package longbough.model.process;

import longbough.model.geometry.SectorGrid;
import longbough.model.numeric.Fast;
import longbough.model.state.Sections;

/**
 * Draws the outlines that decay has in a cross-section into the sectors of one station. Lengths m,
 * angles rad. A sector covered in part takes that part of the depth, so that the area is right.
 */
final class ColumnShapes {
  private static final SectorGrid GRID = SectorGrid.STANDARD;
  private static final int SECTORS = Sections.SECTORS;
  private static final double WIDTH = GRID.widthRad();

  private ColumnShapes() {}

  static void centredDisc(Sections sections, int station, double radius) {
    for (int k = 0; k < SECTORS; k++) {
      sections.decay(station, k, 0, radius);
    }
  }

  /** Half an ellipse on the barrier radius: as deep as given at its bearing, nothing at ±beta. */
  static void halfEllipse(
      Sections sections, int station, double azimuth, double bound, double depth, double beta) {
    int centre = GRID.nearest(azimuth);
    double off = offset(azimuth);
    int span = span(beta);
    for (int j = -span; j <= span; j++) {
      double delta = j * WIDTH - off;
      double low = Math.max(-beta, delta - WIDTH / 2);
      double high = Math.min(beta, delta + WIDTH / 2);
      if (high > low) {
        double middle = (low + high) / 2 / beta;
        double profile = Math.sqrt(Math.max(0, 1 - middle * middle));
        double local = depth * profile * (high - low) / WIDTH;
        sections.decay(
            station, (centre + j + SECTORS) % SECTORS, Math.max(0, bound - local), bound);
      }
    }
  }

  /** A wedge of ±beta, as deep all over. */
  static void wedge(
      Sections sections, int station, double azimuth, double bound, double depth, double beta) {
    int centre = GRID.nearest(azimuth);
    double off = offset(azimuth);
    int span = span(beta);
    for (int j = -span; j <= span; j++) {
      double delta = j * WIDTH - off;
      double covered = Math.min(beta, delta + WIDTH / 2) - Math.max(-beta, delta - WIDTH / 2);
      if (covered > 0) {
        double inner = Math.max(0, bound - depth * covered / WIDTH);
        sections.decay(station, (centre + j + SECTORS) % SECTORS, inner, bound);
      }
    }
  }

  /** Disc of radius a = f B whose far side from its bearing recedes as f grows to 1: it fills B. */
  static void eccentricDisc(
      Sections sections, int station, double azimuth, double bound, double fill) {
    double a = Math.min(1, fill) * bound;
    double away = bound - a;
    int first = GRID.nearest(azimuth);
    double cosOff = Fast.cos(offset(azimuth));
    double sinOff = Fast.sin(offset(azimuth));
    for (int j = 0; j < SECTORS; j++) {
      double cos = GRID.cosOf(j) * cosOff + GRID.sinOf(j) * sinOff;
      double root = a * a - away * away * (1 - cos * cos);
      if (root > 0) {
        double half = Math.sqrt(root);
        double outer = Math.min(bound, away * cos + half);
        if (outer > 0) {
          sections.decay(station, (first + j) % SECTORS, Math.max(0, away * cos - half), outer);
        }
      }
    }
  }

  /** Sectors that are mostly open have no wood outside the barrier zone. */
  static void open(Sections sections, int station, double azimuth, double bound, double half) {
    int centre = GRID.nearest(azimuth);
    double off = offset(azimuth);
    int span = span(half);
    for (int j = -span; j <= span; j++) {
      if (Math.abs(j * WIDTH - off) <= half) {
        sections.open(station, (centre + j + SECTORS) % SECTORS, bound);
      }
    }
  }

  /** From the middle of the nearest sector to an angle. */
  private static double offset(double azimuth) {
    return azimuth - Math.floor(azimuth / WIDTH + 0.5) * WIDTH;
  }

  private static int span(double half) {
    return Math.min(SECTORS / 2, (int) (half / WIDTH) + 1);
  }
}
