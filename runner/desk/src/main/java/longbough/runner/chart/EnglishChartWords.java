package longbough.runner.chart;

/** The words of charts in English. */
final class EnglishChartWords implements ChartWords {

  @Override
  public String time() {
    return "Years from now";
  }

  @Override
  public String describe(LineChart chart) {
    StringBuilder text = new StringBuilder(chart.title());
    text.append(chart.unit().isEmpty() ? "" : " (" + chart.unit() + ")");
    text.append(" over ").append(chart.years()).append(chart.years() == 1 ? " year." : " years.");
    for (Line line : chart.lines()) {
      int last = line.lastYear();
      text.append(' ').append(line.name()).append(": from ");
      text.append(chart.text(line.middle()[0])).append(" to ");
      text.append(chart.text(line.middle()[last]));
      if (line.band() != null) {
        text.append(" (").append(chart.text(line.band().low()[last])).append(" to ");
        text.append(chart.text(line.band().high()[last])).append(' ');
        text.append(chart.bandMeans()).append(')');
      }
      text.append(last < chart.years() ? " in year " + last + ", after which no tree lives." : ".");
    }
    return text.toString();
  }
}
