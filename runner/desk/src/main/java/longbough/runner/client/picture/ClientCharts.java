package longbough.runner.client.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import longbough.model.history.VisitRow;
import longbough.model.history.YearColumn;
import longbough.runner.chart.Line;
import longbough.runner.chart.LineChart;
import longbough.runner.chart.NiceScale;
import longbough.runner.chart.RegimeStyle;
import longbough.runner.client.words.Amounts;
import longbough.runner.client.words.Messages;
import longbough.runner.compare.Band;
import longbough.runner.compare.Bands;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;
import longbough.runner.survival.RegimeSurvival;

/** Leaf, strength of the trunk, survival, and last the cost. */
public final class ClientCharts {
  private final Comparison comparison;
  private final Messages words;
  private final Amounts amounts;

  private ClientCharts(Comparison comparison, Messages words) {
    this.comparison = comparison;
    this.words = words;
    this.amounts = new Amounts(words, comparison.input().crew().currency());
  }

  public static List<LineChart> of(Comparison comparison, Messages words) {
    ClientCharts charts = new ClientCharts(comparison, words);
    int years = comparison.years();
    Function<RegimeResult, Band> leaf =
        plan -> Bands.ofLiving(plan, YearColumn.LEAF_AREA_M2, years);
    Function<RegimeResult, Band> strength =
        plan -> Bands.ofLiving(plan, YearColumn.STRENGTH_LOSS_FRACTION, years);
    Function<RegimeResult, Band> alive = plan -> RegimeSurvival.of(plan, years).band();
    Function<RegimeResult, Band> cost = plan -> Bands.cumulativeCost(plan, years, 0);
    return List.of(
        charts.chart("leaf", leaf, false, words.say("chart.leaf_unit")),
        charts.chart("strength", strength, true, words.say("chart.strength_unit")),
        charts.survival(alive),
        charts.chart("cost", cost, false, words.say("chart.cost_unit", charts.amounts.currency())));
  }

  private LineChart chart(
      String name, Function<RegimeResult, Band> bands, boolean share, String unit) {
    List<Line> lines = lines(bands);
    double highest = lines.stream().mapToDouble(Line::highest).max().orElse(1);
    return new LineChart(
        "client-" + name,
        words.say("chart." + name),
        unit,
        List.of(words.say("chart.reading")),
        share,
        share ? NiceScale.share(highest) : NiceScale.upTo(highest),
        words.say("chart.band"),
        lines,
        comparison.years(),
        new BundleChartWords(words, amounts));
  }

  private LineChart survival(Function<RegimeResult, Band> bands) {
    return new LineChart(
        "client-survival",
        words.say("chart.survival"),
        words.say("chart.survival_unit"),
        List.of(words.say("chart.reading_survival", amounts.futures(comparison.members()))),
        true,
        new NiceScale(1, 0.25),
        words.say("chart.band_survival"),
        lines(bands),
        comparison.years(),
        new BundleChartWords(words, amounts));
  }

  private List<Line> lines(Function<RegimeResult, Band> bands) {
    List<Line> lines = new ArrayList<>();
    for (int plan = 0; plan < comparison.regimes().size(); plan++) {
      RegimeResult result = comparison.regimes().get(plan);
      Band band = bands.apply(result);
      List<Integer> visits =
          result.medianFuture().visits().stream().map(VisitRow::year).distinct().sorted().toList();
      lines.add(new Line(result.name(), RegimeStyle.of(plan), band.median(), band, visits));
    }
    return lines;
  }
}
