package longbough.runner.drawing.elevation;

import java.util.List;
import longbough.runner.drawing.look.FoliageLook;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.Scatter;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.scene.Mark;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** The small drawings that stand for foliage: some variants in each tone, of one size. */
final class FoliageMarks {
  static final int VARIANTS = 3;

  private final Mark[][] marks;
  private final Mark sproutLeaf;

  /** Marks whose cluster has the given radius in units. */
  FoliageMarks(SpeciesLook look, double radius) {
    List<String> tones = Palette.foliage(look);
    marks = new Mark[tones.size()][VARIANTS];
    for (int tone = 0; tone < tones.size(); tone++) {
      for (int variant = 0; variant < VARIANTS; variant++) {
        String key = "f" + tone + (char) ('a' + variant);
        marks[tone][variant] = new Mark(key, cluster(look.foliage(), variant, radius, tones, tone));
      }
    }
    sproutLeaf = new Mark("s", sprout(0.57 * radius));
  }

  int tones() {
    return marks.length;
  }

  Mark leaf(int tone, int variant) {
    return marks[tone][variant];
  }

  Mark sproutLeaf() {
    return sproutLeaf;
  }

  private static List<Shape.Path> cluster(
      FoliageLook look, int variant, double radius, List<String> tones, int tone) {
    String colour = tones.get(tone);
    return switch (look) {
      case LEAVES -> leaves(variant, radius, colour, tones.get(Math.max(0, tone - 1)));
      case SPRAYS -> spray(variant, radius, colour);
      case TUFTS -> tuft(variant, radius, colour);
      case FANS -> fan(variant, radius, colour);
    };
  }

  private static List<Shape.Path> leaves(int variant, double radius, String colour, String edge) {
    Outline outline = new Outline();
    int count = 8;
    for (int leaf = 0; leaf < count; leaf++) {
      double turn = 2 * Math.PI * (leaf + 0.5 * Scatter.unit(variant, leaf, 1)) / count;
      double far = radius * (0.25 + 0.55 * Scatter.unit(variant, leaf, 2));
      double droop = turn + 0.9 * Scatter.around(variant, leaf, 3);
      double x = far * StrictMath.cos(turn);
      double y = far * StrictMath.sin(turn);
      leaf(outline, x, y, droop, radius * 0.72, 0.34);
    }
    return List.of(new Shape.Path(outline, Style.fill(colour).edged(edge, 0.35)));
  }

  /** One leaf about a middle: pointed at both ends. */
  static void leaf(Outline outline, double x, double y, double turn, double length, double plump) {
    double dx = length / 2 * StrictMath.cos(turn);
    double dy = length / 2 * StrictMath.sin(turn);
    outline.move(x - dx, y - dy);
    outline.quad(x - 2 * plump * dy, y + 2 * plump * dx, x + dx, y + dy);
    outline.quad(x + 2 * plump * dy, y - 2 * plump * dx, x - dx, y - dy).close();
  }

  /** A hanging twig with needles, to the left, straight down, or to the right. */
  private static List<Shape.Path> spray(int variant, double radius, String colour) {
    double side = variant - 1.0;
    double length = 2.1 * radius;
    double turn = Math.PI / 2 - 0.75 * side;
    Outline outline = new Outline();
    int teeth = 5;
    double dx = StrictMath.cos(turn);
    double dy = StrictMath.sin(turn);
    outline.move(-dx * length / 2, -dy * length / 2);
    for (int hand = -1; hand <= 1; hand += 2) {
      for (int k = 0; k < teeth; k++) {
        int tooth = hand < 0 ? k : teeth - 1 - k;
        double t = (tooth + 0.6) / teeth - 0.5;
        double wide = radius * 0.42 * (1 - 0.6 * Math.abs(t + 0.1));
        double tipT = t + 0.14;
        double innerT = t - 0.02;
        if (hand < 0) {
          edge(outline, dx, dy, length * tipT, hand * wide);
          edge(outline, dx, dy, length * (t + 0.1), hand * wide * 0.35);
        } else {
          edge(outline, dx, dy, length * (t + 0.1), hand * wide * 0.35);
          edge(outline, dx, dy, length * tipT, hand * wide);
          edge(outline, dx, dy, length * innerT, hand * wide * 0.3);
        }
      }
      if (hand < 0) {
        outline.line(dx * length * 0.56, dy * length * 0.56);
      }
    }
    return List.of(new Shape.Path(outline.close(), Style.fill(colour)));
  }

  private static void edge(Outline outline, double dx, double dy, double along, double across) {
    outline.line(dx * along - dy * across, dy * along + dx * across);
  }

  /** Long needles from a common foot. */
  private static List<Shape.Path> tuft(int variant, double radius, String colour) {
    Outline outline = new Outline();
    int needles = 11;
    for (int needle = 0; needle < needles; needle++) {
      double turn = -Math.PI * (1.25 * needle / (needles - 1.0) - 0.125);
      double length = radius * (1.15 + 0.25 * Scatter.around(variant, needle, 5));
      double bent = turn + 0.25 * Scatter.around(variant, needle, 6);
      outline.move(0, 0.25 * radius);
      outline.line(length * StrictMath.cos(bent), 0.25 * radius + length * StrictMath.sin(bent));
    }
    Outline core = new Outline();
    leaf(core, 0, -0.1 * radius, 0, 1.3 * radius, 0.32);
    return List.of(
        new Shape.Path(core, Style.fill(colour)),
        new Shape.Path(outline, Style.line(colour, Math.max(0.7, 0.11 * radius))));
  }

  /** A flat fan of scales. */
  private static List<Shape.Path> fan(int variant, double radius, String colour) {
    Outline outline = new Outline();
    int lobes = 5;
    for (int lobe = 0; lobe < lobes; lobe++) {
      double turn = -Math.PI / 2 + 0.45 * (lobe - 2) + 0.3 * (variant - 1);
      double length = radius * (1.5 - 0.16 * Math.abs(lobe - 2));
      double x = length / 2 * StrictMath.cos(turn);
      double y = 0.5 * radius + length / 2 * StrictMath.sin(turn);
      leaf(outline, x, y, turn, length, 0.2);
    }
    return List.of(new Shape.Path(outline, Style.fill(colour)));
  }

  private static List<Shape.Path> sprout(double radius) {
    Outline outline = new Outline();
    leaf(outline, -0.75 * radius, -0.55 * radius, 0.75, 1.9 * radius, 0.3);
    leaf(outline, 0.75 * radius, -0.55 * radius, -0.75, 1.9 * radius, 0.3);
    Style style = Style.fill(Palette.SPROUT_LEAF).edged(Palette.SPROUT_EDGE, 0.5);
    return List.of(new Shape.Path(outline, style));
  }
}
