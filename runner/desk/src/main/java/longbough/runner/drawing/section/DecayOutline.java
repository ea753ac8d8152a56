package longbough.runner.drawing.section;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import longbough.model.state.Sections;
import longbough.model.state.SectorHoles;
import longbough.runner.drawing.scene.Outline;

/**
 * Decay of one station as the outline of all its columns together. Spans of neighbouring sectors
 * that overlap are joined by straight sides; where a column ends between two sectors it runs out to
 * a point half a sector on.
 */
final class DecayOutline {
  private static final int SECTORS = Sections.SECTORS;
  private static final int SPANS = SectorHoles.SPANS;
  private static final double HALF = Math.PI / SECTORS;

  /** Pieces reach a little over each other, so that rounding leaves no slit between them; rad. */
  private static final double OVERLAP = 0.002;

  private final SectorHoles holes;
  private final int from;
  private final double x;
  private final double y;
  private final double scale;

  private DecayOutline(Sections sections, int station, double x, double y, double scale) {
    this.holes = sections.holes;
    this.from = station * SECTORS;
    this.x = x;
    this.y = y;
    this.scale = scale;
  }

  static Outline of(Sections sections, int station, double x, double y, double scale) {
    return new DecayOutline(sections, station, x, y, scale).union();
  }

  /** Bearing of the middle of a sector, rad, 0 north, clockwise. */
  static double bearingRad(int sector) {
    return 2 * Math.PI * sector / SECTORS;
  }

  private Outline union() {
    Area decay = new Area();
    for (int sector = 0; sector < SECTORS; sector++) {
      int base = (from + sector) * SPANS;
      for (int span = base; span < base + holes.spans[from + sector]; span++) {
        if (!joined(decay, sector, span, 1)) {
          taper(decay, sector, span, 1);
        }
        if (!meets(sector, span, SECTORS - 1)) {
          taper(decay, sector, span, -1);
        }
      }
    }
    return traced(decay);
  }

  /** Adds what lies between a span and those it meets in the next sector. */
  private boolean joined(Area decay, int sector, int span, int turn) {
    int next = (sector + turn) % SECTORS;
    boolean any = false;
    for (int other = first(next); other < end(next); other++) {
      if (overlap(span, other)) {
        any = true;
        double here = bearingRad(sector) - OVERLAP;
        double there = bearingRad(sector + 1) + OVERLAP;
        Path2D.Double side = new Path2D.Double();
        side.moveTo(px(here, holes.innerM[span]), py(here, holes.innerM[span]));
        side.lineTo(px(here, holes.outerM[span]), py(here, holes.outerM[span]));
        side.lineTo(px(there, holes.outerM[other]), py(there, holes.outerM[other]));
        side.lineTo(px(there, holes.innerM[other]), py(there, holes.innerM[other]));
        side.closePath();
        decay.add(new Area(side));
      }
    }
    return any;
  }

  private boolean meets(int sector, int span, int turn) {
    int next = (sector + turn) % SECTORS;
    for (int other = first(next); other < end(next); other++) {
      if (overlap(span, other)) {
        return true;
      }
    }
    return false;
  }

  private void taper(Area decay, int sector, int span, int side) {
    double bearing = bearingRad(sector) - side * OVERLAP;
    double middle = (holes.innerM[span] + holes.outerM[span]) / 2;
    Path2D.Double tip = new Path2D.Double();
    tip.moveTo(px(bearing, holes.innerM[span]), py(bearing, holes.innerM[span]));
    tip.lineTo(px(bearing, holes.outerM[span]), py(bearing, holes.outerM[span]));
    tip.lineTo(px(bearing + side * HALF, middle), py(bearing + side * HALF, middle));
    tip.closePath();
    decay.add(new Area(tip));
  }

  private boolean overlap(int span, int other) {
    return holes.innerM[span] <= holes.outerM[other] && holes.innerM[other] <= holes.outerM[span];
  }

  private int first(int sector) {
    return (from + sector) * SPANS;
  }

  private int end(int sector) {
    return first(sector) + holes.spans[from + sector];
  }

  private static Outline traced(Area area) {
    Outline outline = new Outline();
    double[] point = new double[6];
    for (PathIterator path = area.getPathIterator(null); !path.isDone(); path.next()) {
      int kind = path.currentSegment(point);
      if (kind == PathIterator.SEG_MOVETO) {
        outline.move(point[0], point[1]);
      } else if (kind == PathIterator.SEG_LINETO) {
        outline.line(point[0], point[1]);
      } else {
        outline.close();
      }
    }
    return outline;
  }

  private double px(double bearing, double radiusM) {
    return x + scale * radiusM * StrictMath.sin(bearing);
  }

  private double py(double bearing, double radiusM) {
    return y - scale * radiusM * StrictMath.cos(bearing);
  }
}
