package longbough.runner.drawing.section;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.Sections;
import longbough.runner.drawing.scene.Outline;

/** Decay of one station as outlines: one for each run of neighbouring decayed sectors. */
final class DecayOutline {
  private static final int SECTORS = Sections.SECTORS;

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
    return 2 * Math.PI * (sector + 0.5) / SECTORS;
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

  /** A run of sectors: along the outer edge, then back along the inner one. */
  private Outline wedge(int from, int to) {
    Outline outline = new Outline();
    for (int sector = from; sector <= to; sector++) {
      arc(outline, sector, outer[sector % SECTORS], false, sector == from);
    }
    for (int sector = to; sector >= from; sector--) {
      arc(outline, sector, inner[sector % SECTORS], true, false);
    }
    return outline.close();
  }

  private Outline allRound() {
    Outline outline = new Outline();
    for (int sector = 0; sector < SECTORS; sector++) {
      arc(outline, sector, outer[sector], false, sector == 0);
    }
    outline.close();
    for (int sector = SECTORS - 1; sector >= 0; sector--) {
      arc(outline, sector, inner[sector], true, sector == SECTORS - 1);
    }
    return outline.close();
  }

  /** One sector's edge as a curve that follows the circle closely. */
  private void arc(Outline outline, int sector, double radius, boolean back, boolean first) {
    double half = Math.PI / SECTORS;
    double start = bearingRad(sector) - (back ? -half : half);
    double end = bearingRad(sector) + (back ? -half : half);
    double bulge = radius / StrictMath.cos(half);
    if (first) {
      outline.move(px(start, radius), py(start, radius));
    } else {
      outline.line(px(start, radius), py(start, radius));
    }
    double middle = bearingRad(sector);
    outline.quad(px(middle, bulge), py(middle, bulge), px(end, radius), py(end, radius));
  }

  private double px(double bearing, double radius) {
    return x + radius * StrictMath.sin(bearing);
  }

  private double py(double bearing, double radius) {
    return y - radius * StrictMath.cos(bearing);
  }
}
