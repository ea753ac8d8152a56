package longbough.runner.cuts.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.cuts.CutFace;
import longbough.runner.cuts.CutTrial;
import longbough.runner.drawing.look.Label;
import longbough.runner.drawing.look.Legend;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.ScaleBar;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** The faces of a collar, a stub and a flush cut of one branch over the years, at one scale. */
final class ClosingPicture {
  /** Years shown, as far as they were played. */
  static final List<Integer> YEARS = List.of(0, 2, 5, 10, 20);

  private static final double LEFT = 14;
  private static final double NAMES = 116;
  private static final double RIGHT = Scene.PAGE_WIDTH - 14;
  private static final double TOP = 104;
  private static final double MOST_HEIGHT = 150;
  private static final double SHARE_OF_CELL = 0.66;
  private static final double CAPTION = 62;

  private final String title;
  private final List<CutTrial> trials;
  private final List<Integer> years;
  private final double cell;
  private final double scale;
  private final List<Shape> shapes = new ArrayList<>();

  private ClosingPicture(String species, List<CutTrial> trials) {
    this.trials = trials;
    title = species + ": how the cut of a " + branch(trials.get(0)) + " closes";
    int last = trials.get(0).years();
    years = YEARS.stream().filter(year -> year <= last).toList();
    cell = (RIGHT - LEFT - NAMES) / years.size();
    double widest = 0;
    double highest = 0;
    for (CutTrial trial : trials) {
      widest = Math.max(widest, trial.faces().get(0).widthM());
      highest = Math.max(highest, trial.faces().get(0).heightM());
    }
    scale = Math.min(SHARE_OF_CELL * cell / widest, MOST_HEIGHT / highest);
  }

  /** A picture of cuts that differ in their placement only. */
  static Scene draw(String species, List<CutTrial> trials) {
    return new ClosingPicture(species, List.copyOf(trials)).scene();
  }

  /** Units a metre. */
  static double scale(List<CutTrial> trials) {
    return new ClosingPicture("", trials).scale;
  }

  private Scene scene() {
    shapes.add(Label.title(LEFT, 34, title));
    String view = "seen from in front, to scale; the ellipses are the model's own";
    shapes.add(Label.quiet(LEFT, 60, view, Shape.Anchor.START));
    double lengthM = ScaleBar.roundLength(110 / scale);
    String words = Words.brief(100 * lengthM) + " cm";
    shapes.addAll(ScaleBar.draw(RIGHT - scale * lengthM - 6, 58, scale * lengthM, words));
    for (int i = 0; i < years.size(); i++) {
      shapes.add(Label.heading(middle(i), TOP, years.get(i) == 0 ? "Cut" : "Year " + years.get(i)));
    }
    double y = TOP + 16;
    StringBuilder description = new StringBuilder(title).append('.');
    for (CutTrial trial : trials) {
      y = row(trial, y, description);
    }
    double legendTop = y + 2;
    Legend legend = legend();
    legend.paint(LEFT, RIGHT, legendTop, shapes);
    int total = (int) Math.ceil(legendTop + legend.height(LEFT, RIGHT) + 14);
    return new Scene(Scene.PAGE_WIDTH, total, title, description.toString(), shapes);
  }

  private double row(CutTrial trial, double top, StringBuilder description) {
    double high = scale * trial.faces().get(0).heightM() + 26;
    double y = top + high / 2;
    String name = CutWords.placement(trial.placement());
    shapes.add(
        new Shape.Text(
            LEFT, y + 6, name + " cut", Label.HEADING, true, Shape.Anchor.START, Palette.TEXT));
    description.append(' ').append(name).append(" cut:");
    for (int i = 0; i < years.size(); i++) {
      CutFace face = trial.faces().get(years.get(i));
      List<Shape> drawn = new ArrayList<>();
      trunk(middle(i), y, high, drawn);
      face(face, middle(i), y, drawn);
      String state = CutWords.face(face, trial.closedYears());
      description.append(" year ").append(face.year()).append(' ').append(state);
      description.append(i + 1 < years.size() ? "," : ".");
      shapes.add(new Shape.Group(name + " cut, year " + face.year() + ": " + state, 1, drawn));
      shapes.add(Label.quiet(middle(i), top + high + 22, state, Shape.Anchor.MIDDLE));
    }
    return top + high + CAPTION - 18;
  }

  private double middle(int column) {
    return LEFT + NAMES + (column + 0.5) * cell;
  }

  private void trunk(double x, double y, double high, List<Shape> onto) {
    double half = cell / 2 - 6;
    Outline bark = new Outline().move(x - half, y - high / 2).line(x + half, y - high / 2);
    bark.line(x + half, y + high / 2).line(x - half, y + high / 2).close();
    onto.add(new Shape.Path(bark, Style.fill(Palette.BARK_LIGHT).faint(0.45)));
  }

  private void face(CutFace face, double x, double y, List<Shape> onto) {
    double wide = scale * face.widthM() / 2;
    double high = scale * face.heightM() / 2;
    Style woundwood = Style.fill(Palette.WOUNDWOOD).edged(Palette.BARK_SHADE, 2);
    onto.add(new Shape.Ellipse(x, y, wide, high, woundwood));
    if (face.closed()) {
      double half = 0.5 * (high - wide) + 4;
      Outline seam = new Outline().move(x, y - half).line(x, y + half);
      onto.add(new Shape.Path(seam, Style.line(Palette.WOUND_EDGE, 1.6)));
      return;
    }
    double openWide = scale * face.openWidthM() / 2;
    double openHigh = scale * face.openHeightM() / 2;
    Style open = Style.fill(Palette.OPEN_WOUND).edged(Palette.WOUND_EDGE, 1.2);
    onto.add(new Shape.Ellipse(x, y, openWide, openHigh, open));
    if (face.stubM() > 0) {
      double stub = scale * face.branchM() / 2;
      Style dead = Style.fill(Palette.DEADWOOD).edged(Palette.DEADWOOD_EDGE, 1.6);
      onto.add(new Shape.Ellipse(x, y, stub, stub, dead));
      onto.add(new Shape.Ellipse(x, y, stub / 2, stub / 2, Style.line(Palette.DEADWOOD_EDGE, 1)));
    }
  }

  private static Legend legend() {
    return new Legend()
        .add(true, "open face", (x, y) -> dot(x, y, Palette.OPEN_WOUND, Palette.WOUND_EDGE))
        .add(true, "woundwood", (x, y) -> dot(x, y, Palette.WOUNDWOOD, Palette.BARK_SHADE))
        .add(true, "end of the stub", (x, y) -> dot(x, y, Palette.DEADWOOD, Palette.DEADWOOD_EDGE));
  }

  private static List<Shape> dot(double x, double y, String fill, String edge) {
    return List.of(new Shape.Ellipse(x, y, 9, 9, Style.fill(fill).edged(edge, 1.4)));
  }

  private static String branch(CutTrial trial) {
    return CutWords.centimetres(trial.diameterM()) + " branch";
  }
}
