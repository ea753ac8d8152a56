package longbough.runner.drawing.look;

import java.util.List;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** A bar of a round length with its length written above it. */
public final class ScaleBar {
  private static final double TICK = 5;

  private ScaleBar() {}

  /** A bar from a point to the right. */
  public static List<Shape> draw(double x, double y, double length, String words) {
    Outline bar = new Outline().move(x, y - TICK).line(x, y + TICK);
    bar.move(x, y).line(x + length, y);
    bar.move(x + length, y - TICK).line(x + length, y + TICK);
    Shape line = new Shape.Path(bar, Style.line(Palette.TEXT, 1.5));
    Shape label = Label.body(x + length / 2, y - TICK - 4, words, Shape.Anchor.MIDDLE);
    return List.of(line, label);
  }

  /** The largest of 1, 2, 5 times a power of ten that is at most the given length. */
  public static double roundLength(double most) {
    double power = StrictMath.pow(10, Math.floor(StrictMath.log10(Math.max(most, 1e-6))));
    double share = most / power;
    return power * (share >= 5 ? 5 : share >= 2 ? 2 : 1);
  }
}
