package longbough.runner.drawing.section;

import java.util.List;
import longbough.model.state.Sections;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Sectors that lie open to the air: no wood has closed over them, so a gap stands there. */
final class OpenFace {
  private static final double HALF = Math.PI / Sections.SECTORS;
  private static final double BARK = 3;

  private final double x;
  private final double y;

  OpenFace(double x, double y) {
    this.x = x;
    this.y = y;
  }

  /** Paints one open sector between two radii, units. */
  void gap(int sector, double fromRadius, double surfaceRadius, List<Shape> onto) {
    double bearing = DecayOutline.bearingRad(sector);
    double outer = Math.max(fromRadius, surfaceRadius) + BARK;
    Outline gap = new Outline();
    point(gap, bearing - HALF, fromRadius, true);
    point(gap, bearing + HALF, fromRadius, false);
    point(gap, bearing + HALF, outer, false);
    point(gap, bearing - HALF, outer, false);
    onto.add(new Shape.Path(gap.close(), Style.fill("#ffffff").edged("#ffffff", 0.6)));
  }

  /** The face of the wound along the inner side of the gap. */
  void face(int sector, double radius, List<Shape> onto) {
    double bearing = DecayOutline.bearingRad(sector);
    Outline face = new Outline();
    point(face, bearing - HALF, radius, true);
    point(face, bearing + HALF, radius, false);
    onto.add(new Shape.Path(face, Style.line(Palette.OPEN_WOUND, 4)));
  }

  private void point(Outline outline, double bearing, double radius, boolean first) {
    double px = x + radius * StrictMath.sin(bearing);
    double py = y - radius * StrictMath.cos(bearing);
    if (first) {
      outline.move(px, py);
    } else {
      outline.line(px, py);
    }
  }
}
