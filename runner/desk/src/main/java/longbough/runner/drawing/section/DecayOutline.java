package longbough.runner.drawing.section;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.Sections;
import longbough.runner.drawing.scene.Outline;

/** Decay of one station as outlines: one for each run of neighbouring decayed sectors. */
final class DecayOutline {
  private static final int SECTORS = Sections.SECTORS;
  private static final double HALF = Math.PI / SECTORS;

  private final double[] inner = new double[SECTORS];
  private final double[] outer = new double[SECTORS];
  private final double x;
  private final double y;

  private DecayOutline(Sections sections, int station, double x, double y, double scale) {
    this.x = x;
    this.y = y;
    for (int sector = 0; sector < SECTORS; sector++) {
      int at = station * SECTORS + sector;
      outer[sector] = scale * Math.max(0, sections.decayOuterM[at]);
      inner[sector] =
          scale * Math.max(0, Math.min(sections.decayInnerM[at], sections.decayOuterM[at]));
    }
  }

  static List<Outline> of(Sections sections, int station, double x, double y, double scale) {
    return new DecayOutline(sections, station, x, y, scale).runs();
  }

  /** Bearing of the middle of a sector, rad, 0 north, clockwise. */
  static double bearingRad(int sector) {
    return 2 * Math.PI * sector / SECTORS;
  }

  private List<Outline> runs() {
    List<Outline> runs = new ArrayList<>();
    int sound = firstSound();
    if (sound < 0) {
      runs.add(allRound());
      return runs;
    }
    int sector = sound + 1;
    while (sector <= sound + SECTORS) {
      int from = sector;
      while (sector < sound + SECTORS && decayed(sector)) {
        sector++;
      }
      if (sector > from) {
        runs.add(wedge(from, sector - 1));
      }
      sector++;
    }
    return runs;
  }

  private int firstSound() {
    for (int sector = 0; sector < SECTORS; sector++) {
      if (!decayed(sector)) {
        return sector;
      }
    }
    return -1;
  }

  private boolean decayed(int sector) {
    int at = sector % SECTORS;
    return outer[at] > inner[at];
  }

  /** A run of sectors: from a point along the outer edge to a point, back along the inner one. */
  private Outline wedge(int from, int to) {
    int n = to - from + 1;
    double[] bearings = new double[2 * n + 2];
    double[] radii = new double[2 * n + 2];
    bearings[0] = bearingRad(from) - HALF;
    radii[0] = middle(from);
    bearings[n + 1] = bearingRad(to) + HALF;
    radii[n + 1] = middle(to);
    for (int i = 0; i < n; i++) {
      bearings[1 + i] = bearingRad(from + i);
      radii[1 + i] = outer[(from + i) % SECTORS];
      bearings[n + 2 + i] = bearingRad(to - i);
      radii[n + 2 + i] = inner[(to - i) % SECTORS];
    }
    Outline outline = new Outline().move(px(bearings[0], radii[0]), py(bearings[0], radii[0]));
    smooth(outline, bearings, radii, 1, n + 1);
    smooth(outline, bearings, radii, n + 2, 2 * n + 2);
    return outline.close();
  }

  /** Through the middles of the sides, to end at the last point; wraps to the first. */
  private void smooth(Outline outline, double[] bearings, double[] radii, int from, int to) {
    int end = to % bearings.length;
    for (int i = from; i < to; i++) {
      int next = (i + 1) % bearings.length;
      double x1 = px(bearings[i], radii[i]);
      double y1 = py(bearings[i], radii[i]);
      double x2 = px(bearings[next], radii[next]);
      double y2 = py(bearings[next], radii[next]);
      boolean last = next == end;
      outline.quad(x1, y1, last ? x2 : (x1 + x2) / 2, last ? y2 : (y1 + y2) / 2);
    }
  }

  private double middle(int sector) {
    return (inner[sector % SECTORS] + outer[sector % SECTORS]) / 2;
  }

  private Outline allRound() {
    Outline outline = new Outline();
    ring(outline, outer, 1);
    ring(outline, inner, -1);
    return outline;
  }

  /** A closed smooth line through every sector; the other way round for a hole. */
  private void ring(Outline outline, double[] radii, int step) {
    for (int i = 0; i <= SECTORS; i++) {
      int sector = Math.floorMod(i * step, SECTORS);
      int next = Math.floorMod((i + 1) * step, SECTORS);
      double x1 = px(bearingRad(sector), radii[sector]);
      double y1 = py(bearingRad(sector), radii[sector]);
      double midX = (x1 + px(bearingRad(next), radii[next])) / 2;
      double midY = (y1 + py(bearingRad(next), radii[next])) / 2;
      if (i == 0) {
        outline.move(midX, midY);
      } else {
        outline.quad(x1, y1, midX, midY);
      }
    }
    outline.close();
  }

  private double px(double bearing, double radius) {
    return x + radius * StrictMath.sin(bearing);
  }

  private double py(double bearing, double radius) {
    return y - radius * StrictMath.cos(bearing);
  }
}
