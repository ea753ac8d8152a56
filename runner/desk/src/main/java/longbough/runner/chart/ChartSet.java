package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import longbough.model.history.History;
import longbough.model.history.VisitRow;
import longbough.model.history.YearColumn;
import longbough.runner.compare.Band;
import longbough.runner.compare.Bands;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;
import longbough.runner.survival.RegimeSurvival;

/** The charts of a comparison, in the order of the report. */
public final class ChartSet {
  /** What the figures of a trunk need said; the others explain themselves. */
  private static final Map<YearColumn, String> NOTES =
      Map.of(
          YearColumn.DECAY_AREA_FRACTION,
          "At the height where decay has taken most of the strength. That height can change, and then the line jumps.",
          YearColumn.WALL_RATIO,
          "Thinnest sound wall t over trunk radius R at that height; it can change, and then the line jumps.");

  private static final String OF_FUTURES = "in nine of ten futures";

  private final Comparison comparison;

  private ChartSet(Comparison comparison) {
    this.comparison = comparison;
  }

  public static List<LineChart> of(Comparison comparison) {
    ChartSet set = new ChartSet(comparison);
    return List.of(
        set.measure("leaf-area", YearColumn.LEAF_AREA_M2, "Leaf area", "m²"),
        set.measure("reserve", YearColumn.RESERVE_FRACTION, "Reserve", "% of its ceiling"),
        set.measure("sprouts", YearColumn.SPROUT_COUNT, "Sprouts", "number"),
        set.measure("open-wound", YearColumn.OPEN_WOUND_CM2, "Open wound", "cm²"),
        set.measure(
            "decay",
            YearColumn.DECAY_AREA_FRACTION,
            "Decay where it has weakened the trunk most",
            "% of the section"),
        set.measure(
            "wall-ratio",
            YearColumn.WALL_RATIO,
            "Residual wall ratio where decay has weakened the trunk most",
            "t/R"),
        set.survival(),
        set.cost());
  }

  private LineChart measure(String file, YearColumn column, String title, String unit) {
    boolean percent = unit.startsWith("%");
    List<Line> lines =
        lines(result -> Bands.ofLiving(result, column, comparison.years()), band -> band.median());
    double highest = lines.stream().mapToDouble(Line::highest).max().orElse(1);
    boolean share = percent || column == YearColumn.WALL_RATIO;
    NiceScale scale = share ? NiceScale.share(highest) : NiceScale.upTo(highest);
    List<String> reading =
        new ArrayList<>(List.of(reading() + "; living trees only (how many live: see Survival)"));
    if (NOTES.containsKey(column)) {
      reading.add(NOTES.get(column));
    }
    return new LineChart(
        file,
        title,
        unit,
        List.copyOf(reading),
        percent,
        scale,
        OF_FUTURES,
        lines,
        comparison.years(),
        ChartWords.ENGLISH);
  }

  private LineChart survival() {
    List<Line> lines = new ArrayList<>();
    for (int regime = 0; regime < comparison.regimes().size(); regime++) {
      Band band = RegimeSurvival.of(comparison.regimes().get(regime), comparison.years()).band();
      lines.add(line(regime, band.median(), band));
    }
    return new LineChart(
        "survival",
        "Survival",
        "% of futures in which the tree lives",
        List.of(
            "Line: share of "
                + comparison.members()
                + " futures; band: where endlessly many would lie, 95 % sure; mark: visit"),
        true,
        new NiceScale(1, 0.25),
        "with a confidence of 95 %",
        lines,
        comparison.years(),
        ChartWords.ENGLISH);
  }

  private LineChart cost() {
    double rate = comparison.input().crew().discountRate();
    List<Line> lines =
        lines(
            result -> Bands.cumulativeCost(result, comparison.years(), rate),
            band -> band.median());
    double highest = lines.stream().mapToDouble(Line::highest).max().orElse(1);
    return new LineChart(
        "cost",
        "Cost up to each year",
        comparison.input().crew().currency(),
        List.of(
            reading() + "; discounted by " + ChartText.value(rate * 100, 100 * rate) + " % a year"),
        false,
        NiceScale.upTo(highest),
        OF_FUTURES,
        lines,
        comparison.years(),
        ChartWords.ENGLISH);
  }

  private String reading() {
    return "Line: median of " + comparison.members() + " futures; band: 90 % of them; mark: visit";
  }

  private List<Line> lines(Function<RegimeResult, Band> bands, Function<Band, double[]> middle) {
    List<Line> lines = new ArrayList<>();
    for (int regime = 0; regime < comparison.regimes().size(); regime++) {
      Band band = bands.apply(comparison.regimes().get(regime));
      lines.add(line(regime, middle.apply(band), band));
    }
    return lines;
  }

  private Line line(int regime, double[] middle, Band band) {
    RegimeResult result = comparison.regimes().get(regime);
    return new Line(
        result.name(), RegimeStyle.of(regime), middle, band, visitYears(result.medianFuture()));
  }

  private static List<Integer> visitYears(History history) {
    return history.visits().stream().map(VisitRow::year).distinct().sorted().toList();
  }
}
