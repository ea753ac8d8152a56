package longbough.runner.drawing.elevation;

import java.util.List;
import longbough.runner.drawing.look.Label;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/**
 * What all trees of a picture stand on and are measured by: the ground, lines of height, a person.
 */
final class Ground {
  private static final double MARGIN = 14;
  private static final double DEPTH = 9;

  private Ground() {}

  static void paint(
      double left, double right, double groundY, double scale, double heightM, List<Shape> onto) {
    double step = heightM > 12 ? 5 : heightM > 5 ? 2 : 1;
    Outline lines = new Outline();
    for (double height = step; height <= heightM; height += step) {
      double y = groundY - scale * height;
      lines.move(left - 8, y).line(right, y);
      String words = Words.whole(height) + " m";
      onto.add(Label.quiet(left - MARGIN, y + 6, words, Shape.Anchor.END));
    }
    onto.add(0, new Shape.Path(lines, Style.line(Palette.GUIDE, 0.8)));
    Outline soil = new Outline().move(MARGIN, groundY).line(right, groundY);
    soil.line(right, groundY + DEPTH).line(MARGIN, groundY + DEPTH).close();
    onto.add(new Shape.Path(soil, Style.fill(Palette.SOIL)));
    Outline ground = new Outline().move(MARGIN, groundY).line(right, groundY);
    onto.add(new Shape.Path(ground, Style.line(Palette.GROUND, 1.6)));
    onto.addAll(Person.draw(left + 5, groundY, scale));
  }
}
