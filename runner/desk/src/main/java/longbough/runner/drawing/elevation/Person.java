package longbough.runner.drawing.elevation;

import java.util.List;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Someone standing beside the tree, for a sense of size. */
final class Person {
  static final double HEIGHT_M = 1.75;

  private Person() {}

  static List<Shape> draw(double x, double groundY, double scale) {
    double h = HEIGHT_M * scale;
    double head = 0.075 * h;
    Style style = Style.fill(Palette.PERSON);
    Outline body = new Outline().move(x - 0.035 * h, groundY);
    body.line(x - 0.07 * h, groundY - 0.48 * h);
    body.curve(
        x - 0.15 * h, groundY - 0.62 * h, x - 0.13 * h, groundY - 0.82 * h, x, groundY - 0.83 * h);
    body.curve(
        x + 0.13 * h,
        groundY - 0.82 * h,
        x + 0.15 * h,
        groundY - 0.62 * h,
        x + 0.07 * h,
        groundY - 0.48 * h);
    body.line(x + 0.035 * h, groundY).line(x, groundY - 0.4 * h).close();
    Shape round = new Shape.Ellipse(x, groundY - h + head, 0.9 * head, head, style);
    return List.of(new Shape.Path(body, style), round);
  }
}
