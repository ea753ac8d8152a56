package longbough.runner.client.picture;

import java.util.List;
import java.util.stream.Collectors;
import longbough.runner.chart.ChartWords;
import longbough.runner.chart.Line;
import longbough.runner.chart.LineChart;
import longbough.runner.client.words.Amounts;
import longbough.runner.client.words.Messages;

/** The words of charts out of the messages. */
final class BundleChartWords implements ChartWords {
  private final Messages words;
  private final Amounts amounts;

  BundleChartWords(Messages words, Amounts amounts) {
    this.words = words;
    this.amounts = amounts;
  }

  @Override
  public String time() {
    return words.say("chart.time");
  }

  @Override
  public String describe(LineChart chart) {
    List<Line> lines = chart.lines();
    String all = lines.stream().map(line -> line(chart, line)).collect(Collectors.joining(" "));
    return words.say("chart.words", chart.heading(), amounts.years(chart.years()), all);
  }

  private String line(LineChart chart, Line line) {
    int last = line.lastYear();
    String first = chart.text(line.middle()[0]);
    String end = chart.text(line.middle()[last]);
    return last < chart.years()
        ? words.say("chart.line_ends", line.name(), first, end, amounts.number(last))
        : words.say(
            "chart.line",
            line.name(),
            first,
            end,
            chart.text(line.band().low()[last]),
            chart.text(line.band().high()[last]),
            chart.bandMeans());
  }
}
