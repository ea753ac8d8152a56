package longbough.runner.drawing.section;

import java.util.List;
import longbough.runner.drawing.look.Legend;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Names what the sections show; leaves out what they don't. */
final class SectionLegend {
  static final int SAPWOOD = 0;
  static final int HEARTWOOD = 1;
  static final int DECAY = 2;
  static final int BARRIER = 3;
  static final int OPEN = 4;
  static final int CLOSED = 5;
  static final int WORST = 6;
  static final int WALL = 7;
  static final int RINGS = 8;
  static final int HELD = 9;
  static final int BRANCH = 10;
  static final int KINDS = 11;

  private final Legend legend = new Legend();

  SectionLegend(boolean[] shown) {
    legend.add(shown[SAPWOOD], "sapwood", (x, y) -> box(x, y, Palette.SAPWOOD, Palette.BARK));
    legend.add(shown[HEARTWOOD], "heartwood", (x, y) -> box(x, y, Palette.HEARTWOOD, Palette.BARK));
    legend.add(
        shown[BRANCH], "wood of the branch", (x, y) -> box(x, y, Palette.BRANCH, Palette.RING));
    legend.add(shown[DECAY], "decay", (x, y) -> box(x, y, Palette.DECAY, Palette.DECAY_EDGE));
    legend.add(
        shown[HELD],
        "decay held in the branch core",
        (x, y) -> box(x, y, Palette.HELD, Palette.DECAY_EDGE));
    legend.add(shown[BARRIER], "barrier zone", (x, y) -> line(x, y, Palette.BARRIER, 2.4, 0));
    legend.add(shown[OPEN], "open wound", (x, y) -> line(x, y, Palette.OPEN_WOUND, 5, 0));
    legend.add(shown[CLOSED], "closed wound", (x, y) -> tick(x, y));
    legend.add(shown[WORST], "weakest height", (x, y) -> line(x, y, Palette.TEXT, 1.2, 4));
    legend.add(shown[RINGS], "every fifth ring since the start", SectionLegend::rings);
    legend.add(
        shown[WALL],
        "least sound wood, t",
        (x, y) -> CrossSectionPainter.span(x - 12, y, x + 12, y));
  }

  double paint(double left, double right, double top, List<Shape> onto) {
    legend.paint(left, right, top, onto);
    return legend.height(left, right);
  }

  private static List<Shape> box(double x, double y, String fill, String edge) {
    Outline box = new Outline().move(x - 13, y - 8).line(x + 13, y - 8);
    box.line(x + 13, y + 8).line(x - 13, y + 8).close();
    return List.of(new Shape.Path(box, Style.fill(fill).edged(edge, 1)));
  }

  private static List<Shape> line(double x, double y, String colour, double width, double dash) {
    Outline line = new Outline().move(x - 13, y).line(x + 13, y);
    return List.of(new Shape.Path(line, Style.line(colour, width).dashed(dash)));
  }

  private static List<Shape> tick(double x, double y) {
    Outline bark = new Outline().move(x, y - 9).line(x, y + 9);
    Outline tick = new Outline().move(x - 5, y).line(x + 5, y);
    return List.of(
        new Shape.Path(bark, Style.line(Palette.BARK, 2)),
        new Shape.Path(tick, Style.line(Palette.WOUND_EDGE, 1.6)));
  }

  private static List<Shape> rings(double x, double y) {
    Outline rings = new Outline();
    for (int ring = -1; ring <= 1; ring++) {
      rings.move(x - 13, y + 5 * ring + 2).quad(x, y + 5 * ring - 4, x + 13, y + 5 * ring + 2);
    }
    return List.of(new Shape.Path(rings, Style.line(Palette.RING, 1)));
  }
}
