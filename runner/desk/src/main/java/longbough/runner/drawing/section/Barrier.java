package longbough.runner.drawing.section;

import java.util.List;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/**
 * The line of a barrier zone; a long one has a light edge, to stand out from decay in grey print,
 * and one too short to be seen is left out.
 */
final class Barrier {
  private static final double LONG = 16;
  private static final double SHORTEST = 5;

  private Barrier() {}

  static List<Shape> draw(Outline line, double length) {
    if (length < SHORTEST) {
      return List.of();
    }
    if (length < LONG) {
      return List.of(new Shape.Path(line, Style.line(Palette.BARRIER, 1.8)));
    }
    return List.of(
        new Shape.Path(line, Style.line("#ffffff", 4)),
        new Shape.Path(line, Style.line(Palette.BARRIER, 2.4)));
  }
}
