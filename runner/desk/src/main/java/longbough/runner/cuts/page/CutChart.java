package longbough.runner.cuts.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import longbough.model.pruning.Placement;
import longbough.runner.chart.NiceScale;
import longbough.runner.cuts.CutTable;
import longbough.runner.cuts.CutTrial;
import longbough.runner.drawing.look.Label;
import longbough.runner.drawing.look.Legend;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/**
 * One species: years to close, length of the column and share of the section lost over the size of
 * the branch, a line a placement. All species of a table have the same axes.
 */
final class CutChart {
  private static final double LEFT = 14;
  private static final double RIGHT = Scene.PAGE_WIDTH - 14;
  private static final double TOP = 118;
  private static final double HIGH = 190;
  private static final double AXIS = 46;
  private static final double GAP = 22;
  private static final double MOST_CM = 20;
  private static final double DOT = 5.5;

  private final CutTable table;
  private final String species;
  private final List<Shape> shapes = new ArrayList<>();

  private CutChart(CutTable table, String species) {
    this.table = table;
    this.species = species;
  }

  static Scene draw(CutTable table, String species) {
    return new CutChart(table, species).scene();
  }

  private Scene scene() {
    String title = CutWords.species(species);
    int years = table.trials().get(0).years();
    shapes.add(Label.title(LEFT, 34, title));
    String what = "after " + years + " years, by diameter of the branch that was cut off";
    shapes.add(Label.quiet(LEFT, 60, what, Shape.Anchor.START));
    panel(0, "years to close", t -> years(t, years), NiceScale.upTo(years), 1);
    panel(1, "length of the column, m", CutChart::columnM, upTo(CutChart::columnM), 1);
    panel(2, "share of the section lost, %", CutTrial::sectionShare, shares(), 100);
    Legend legend = legend();
    double legendTop = TOP + HIGH + 58;
    legend.paint(LEFT, RIGHT, legendTop, shapes);
    int total = (int) Math.ceil(legendTop + legend.height(LEFT, RIGHT) + 14);
    return new Scene(Scene.PAGE_WIDTH, total, title, description(), shapes);
  }

  private NiceScale upTo(ToDoubleFunction<CutTrial> value) {
    return NiceScale.upTo(table.trials().stream().mapToDouble(value).max().orElse(1));
  }

  private NiceScale shares() {
    return NiceScale.share(
        table.trials().stream().mapToDouble(CutTrial::sectionShare).max().orElse(1));
  }

  /** What has not closed stands at the end of the years played. */
  private static double years(CutTrial trial, int years) {
    return Double.isNaN(trial.closedYears()) ? years : trial.closedYears();
  }

  private static double columnM(CutTrial trial) {
    return trial.columnUpM() + trial.columnDownM();
  }

  private void panel(
      int number, String name, ToDoubleFunction<CutTrial> value, NiceScale scale, double times) {
    double wide = (RIGHT - LEFT - 2 * GAP) / 3;
    double left = LEFT + number * (wide + GAP) + AXIS;
    double right = LEFT + number * (wide + GAP) + wide;
    shapes.add(Label.body(left - AXIS + 4, TOP - 22, name, Shape.Anchor.START));
    Outline guides = new Outline();
    int ticks = (int) Math.rint(scale.high() / scale.step());
    for (int tick = 0; tick <= ticks; tick++) {
      double y = TOP + HIGH * (1 - (double) tick / ticks);
      guides.move(left, y).line(right, y);
      String words = plain(times * tick * scale.step());
      shapes.add(Label.quiet(left - 8, y + 6, words, Shape.Anchor.END));
    }
    shapes.add(0, new Shape.Path(guides, Style.line(Palette.GUIDE, 0.8)));
    for (double diameter : CutTable.DIAMETERS_M) {
      String words = Words.whole(100 * diameter) + (diameter == last() ? " cm" : "");
      double x = x(left, right, diameter);
      shapes.add(Label.quiet(x, TOP + HIGH + 24, words, Shape.Anchor.MIDDLE));
    }
    for (Placement placement : CutTable.PLACEMENTS) {
      line(placement, value, scale.high(), left, right, number == 0);
    }
  }

  private static double last() {
    return CutTable.DIAMETERS_M.get(CutTable.DIAMETERS_M.size() - 1);
  }

  private static double x(double left, double right, double diameterM) {
    return left + (right - left - 14) * 100 * diameterM / MOST_CM;
  }

  private void line(
      Placement placement,
      ToDoubleFunction<CutTrial> value,
      double high,
      double left,
      double right,
      boolean closing) {
    Outline line = new Outline();
    List<Shape> dots = new ArrayList<>();
    for (CutTrial trial : table.trials()) {
      if (trial.species().equals(species) && trial.placement() == placement) {
        double px = x(left, right, trial.diameterM());
        double y = TOP + HIGH * (1 - Math.min(1, value.applyAsDouble(trial) / high));
        if (line.isEmpty()) {
          line.move(px, y);
        } else {
          line.line(px, y);
        }
        dots.addAll(dot(placement, px, y, closing && Double.isNaN(trial.closedYears())));
      }
    }
    Style style = Style.line(colour(placement), 2.6).dashed(dash(placement));
    shapes.add(new Shape.Path(line, style));
    shapes.addAll(dots);
  }

  private static Legend legend() {
    Legend legend = new Legend();
    for (Placement placement : CutTable.PLACEMENTS) {
      legend.add(
          true,
          CutWords.placement(placement).toLowerCase(Locale.ROOT) + " cut",
          (x, y) -> sample(placement, x, y));
    }
    return legend.add(true, "still open", (x, y) -> dot(Placement.COLLAR, x, y, true));
  }

  private static List<Shape> sample(Placement placement, double x, double y) {
    List<Shape> sample = new ArrayList<>();
    Outline line = new Outline().move(x - 14, y).line(x + 14, y);
    Style style = Style.line(colour(placement), 2.6).dashed(dash(placement));
    sample.add(new Shape.Path(line, style));
    sample.addAll(dot(placement, x, y, false));
    return sample;
  }

  // Shapes as well as colours, for grey print.
  private static List<Shape> dot(Placement placement, double x, double y, boolean hollow) {
    Style style =
        hollow
            ? Style.fill("#ffffff").edged(colour(placement), 2.2)
            : Style.fill(colour(placement)).edged("#ffffff", 1);
    if (placement == Placement.COLLAR) {
      return List.of(new Shape.Ellipse(x, y, DOT, DOT, style));
    }
    Outline mark = new Outline();
    if (placement == Placement.STUB) {
      mark.move(x - DOT, y - DOT).line(x + DOT, y - DOT).line(x + DOT, y + DOT);
      mark.line(x - DOT, y + DOT).close();
    } else {
      mark.move(x, y - DOT - 2).line(x + DOT + 2, y + DOT).line(x - DOT - 2, y + DOT).close();
    }
    return List.of(new Shape.Path(mark, style));
  }

  private static String colour(Placement placement) {
    return switch (placement) {
      case COLLAR -> Palette.BARRIER;
      case STUB -> Palette.DEADWOOD_EDGE;
      case FLUSH -> Palette.OPEN_WOUND;
    };
  }

  private static double dash(Placement placement) {
    return placement == Placement.STUB ? 5 : 0;
  }

  private static String plain(double value) {
    return Math.abs(value - Math.rint(value)) < 1e-9
        ? Words.whole(value)
        : Math.abs(10 * value - Math.rint(10 * value)) < 1e-9
            ? Words.oneDecimal(value)
            : Words.twoDecimals(value);
  }

  private String description() {
    StringBuilder words = new StringBuilder();
    for (CutTrial trial : table.trials()) {
      if (trial.species().equals(species)) {
        words.append(CutWords.placement(trial.placement())).append(" cut of ");
        words.append(CutWords.centimetres(trial.diameterM())).append(": ");
        words.append(
            Double.isNaN(trial.closedYears())
                ? "still open"
                : "closed after " + Words.whole(trial.closedYears()) + " years");
        words.append(", column ").append(Words.twoDecimals(columnM(trial))).append(" m, ");
        words.append(Words.percent(trial.sectionShare())).append(" of the section. ");
      }
    }
    return words.toString().strip();
  }
}
