package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.batch.Batch;
import longbough.runner.batch.Measure;
import longbough.runner.batch.Outlook;
import longbough.runner.batch.TreeOutlook;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;
import longbough.runner.type.Fonts;
import longbough.runner.type.Lines;

/** Who is in trouble: a row a tree, a panel a measure, bars that stop at or pass its line. */
public final class TroubleChart {
  /** How many trees are shown. */
  public static final int SHOWN = 40;

  private static final double TITLE = 22;
  private static final double TOP = 150;
  private static final double ROW = 30;
  private static final double BAR = 15;
  private static final double LEFT = 292;
  private static final double WIDTH = 150;
  private static final double GAP = 26;
  private static final double NAMES = 232;
  private static final String PAST = "#b4480a";
  private static final String WITHIN = "#7e9aa8";
  private static final double PERCENT = 100;
  private static final int VALUE_ROOM = 40;

  /** How much wider bold type runs, with some to spare. */
  private static final double BOLDER = 1.1;

  private static final double APART = 8;
  private static final double LEAST_SPECIES = 40;

  private final Batch batch;
  private final List<TreeOutlook> shown;
  private final List<Shape> shapes = new ArrayList<>();

  private TroubleChart(Batch batch) {
    this.batch = batch;
    this.shown = batch.ranked().subList(0, Math.min(SHOWN, batch.ranked().size()));
  }

  public static Scene of(Batch batch) {
    return new TroubleChart(batch).scene();
  }

  private Scene scene() {
    String title = "Who is in trouble if left alone";
    shapes.add(new Shape.Text(20, 32, title, TITLE, true, Shape.Anchor.START, Palette.TEXT));
    double height = Math.max(1, shown.size()) * ROW;
    PanelPlot names = panel(0, height);
    double baseline = 58;
    for (String line : reading()) {
      names.quiet(20, baseline, line, Shape.Anchor.START);
      baseline += PanelPlot.LINE_HEIGHT;
    }
    for (Measure measure : Measure.values()) {
      head(panel(measure.ordinal(), height), measure, height);
    }
    for (int row = 0; row < shown.size(); row++) {
      row(names, row, height);
    }
    return new Scene(Scene.PAGE_WIDTH, (int) (TOP + height + 20), title, description(), shapes);
  }

  private List<String> reading() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Bar: left alone, mean over the futures; dark red: beyond the line. Diamond: under the regime"
            + " in which the tree fares best.");
    if (shown.size() < batch.ranked().size()) {
      lines.add("The first " + shown.size() + " of " + batch.ranked().size() + " trees.");
    }
    return lines;
  }

  private PanelPlot panel(int index, double height) {
    double left = LEFT + index * (WIDTH + GAP);
    return new PanelPlot(left, TOP, WIDTH - VALUE_ROOM, height, 0, 1, 1, shapes);
  }

  private void head(PanelPlot plot, Measure measure, double height) {
    plot.bold(plot.x(0), TOP - 34, measure.label() + ", %", PanelPlot.TYPE, Palette.TEXT);
    plot.segment(plot.x(0), TOP, plot.x(0), TOP + height, Style.line(Palette.GUIDE, 1));
    List<Double> lines = shown.stream().map(tree -> line(measure, tree)).distinct().toList();
    if (lines.size() == 1) {
      double x = plot.x(lines.get(0));
      String words = "line at " + Math.round(PERCENT * lines.get(0));
      plot.quiet(x, TOP - 12, words, Shape.Anchor.MIDDLE);
      plot.segment(x, TOP - 3, x, TOP + height, Style.line(Palette.QUIET_TEXT, 1.2).dashed(4));
    }
  }

  private static double line(Measure measure, TreeOutlook tree) {
    return measure.line(tree.tree().input().years());
  }

  private void row(PanelPlot names, int row, double height) {
    TreeOutlook tree = shown.get(row);
    double y = TOP + ROW * (row + 0.5);
    if (row % 2 == 1) {
      shapes.add(
          0,
          new Shape.Path(
              box(12, y - ROW / 2, Scene.PAGE_WIDTH - 12, y + ROW / 2), Style.fill("#f5f7f5")));
    }
    names.quiet(40, y + 5, Integer.toString(row + 1), Shape.Anchor.END);
    String name = cut(tree.tree().name(), NAMES);
    names.bold(50, y + 5, name, PanelPlot.TYPE, Palette.TEXT);
    double taken = Fonts.width(name, PanelPlot.TYPE) * BOLDER + APART;
    if (taken + LEAST_SPECIES < NAMES) {
      String species = cut(tree.tree().input().species().commonName(), NAMES - taken);
      names.quiet(50 + taken, y + 5, species, Shape.Anchor.START);
    }
    for (Measure measure : Measure.values()) {
      bar(panel(measure.ordinal(), height), measure, tree, y);
    }
  }

  private void bar(PanelPlot plot, Measure measure, TreeOutlook tree, double y) {
    Outlook alone = tree.alone();
    double value = measure.value(alone);
    boolean past = measure.passed(alone);
    double end = plot.x(clamped(value));
    String colour = past ? PAST : WITHIN;
    if (end > plot.x(0)) {
      shapes.add(new Shape.Path(box(plot.x(0), y - BAR / 2, end, y + BAR / 2), Style.fill(colour)));
    }
    Outlook best = tree.best();
    if (!best.equals(alone)) {
      double at = plot.x(clamped(measure.value(best)));
      plot.mark(at, y, RegimeStyle.Mark.DIAMOND, Style.fill("#ffffff").edged(Palette.TEXT, 1.6));
    }
    String words = (past ? "! " : "") + Math.round(PERCENT * value);
    plot.text(
        plot.right() + VALUE_ROOM,
        y + 5,
        words.replace('-', '\u2212'),
        Shape.Anchor.END,
        past ? PAST : Palette.QUIET_TEXT);
  }

  private static double clamped(double value) {
    return Math.max(0, Math.min(1, value));
  }

  private static Outline box(double left, double top, double right, double bottom) {
    return new Outline()
        .move(left, top)
        .line(right, top)
        .line(right, bottom)
        .line(left, bottom)
        .close();
  }

  private static String cut(String name, double room) {
    return String.join("", Lines.of(name, PanelPlot.TYPE, room, 1));
  }

  private String description() {
    StringBuilder text =
        new StringBuilder("Trees ranked by the trouble they are in if left alone.");
    for (int row = 0; row < shown.size(); row++) {
      TreeOutlook tree = shown.get(row);
      text.append(' ').append(row + 1).append(": ").append(tree.tree().name());
      for (Measure measure : Measure.values()) {
        text.append(", ").append(measure.label()).append(' ');
        text.append(Math.round(PERCENT * measure.value(tree.alone()))).append(" %");
      }
      text.append('.');
    }
    return text.toString();
  }
}
