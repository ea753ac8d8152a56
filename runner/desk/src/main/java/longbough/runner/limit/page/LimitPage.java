package longbough.runner.limit.page;

import java.util.List;
import java.util.Locale;
import longbough.model.pruning.Season;
import longbough.runner.chart.LimitChart;
import longbough.runner.chart.ResponseChart;
import longbough.runner.limit.Limit;
import longbough.runner.limit.LimitTable;
import longbough.runner.limit.Threshold;
import longbough.runner.limit.TradeLimit;
import longbough.runner.limit.Way;
import longbough.runner.report.Capital;
import longbough.runner.report.CautionSection;
import longbough.runner.report.ChartFigure;
import longbough.runner.report.Page;
import longbough.runner.report.PageFrame;

/** The page: the lowest limits, each way with its curves, the lines, and the cautions. */
final class LimitPage {

  private LimitPage() {}

  static String of(LimitTable table, String version) {
    return PageFrame.of("What one visit can take", "", page -> body(page, table, version));
  }

  private static void body(Page page, LimitTable table, String version) {
    page.open("main");
    page.open("header");
    page.element("h1", "What one visit can take");
    page.element("p", table.input().title(), "class", "lead");
    page.element("p", LimitWords.tree(table.input()) + ".");
    page.close();
    page.open("section");
    page.element("h2", "The lowest limits");
    page.element("p", LimitWords.trade(table));
    ChartFigure.write(page, LimitChart.of(table));
    lowest(page, table);
    page.close();
    table.ways().forEach(way -> way(page, table, way));
    turns(page, table);
    page.open("section");
    page.element("h2", "How to read this");
    page.open("ul");
    LimitWords.reading(table).forEach(line -> page.element("li", line));
    page.close();
    page.element("h3", "The lines, and how well each is known");
    page.open("ul");
    for (Threshold threshold : table.thresholds()) {
      page.element("li", LimitWords.line(threshold));
    }
    page.close().close();
    CautionSection.write(page);
    page.close();
    page.open("footer");
    page.element(
        "p",
        "Longbough "
            + version
            + ". Made by \u2018longbough limit\u2019; the same version, scenario and seed give the same"
            + " page. The numbers stand in limits.csv and limit-curves.csv.");
    page.close();
  }

  private static void lowest(Page page, LimitTable table) {
    page.scroll().open("table");
    head(
        page,
        "Way (limits in % of the live foliage)",
        table.seasons().stream().map(LimitPage::word).toList());
    page.open("tbody");
    for (Way way : table.ways()) {
      page.open("tr");
      page.element("th", way.label(), "scope", "row");
      for (Season season : table.seasons()) {
        page.element("td", LimitWords.binding(table.binding(way, season)));
      }
      page.close();
    }
    page.close().close().close();
  }

  private static void way(Page page, LimitTable table, Way way) {
    page.open("section");
    page.element("h2", Capital.of(way.label()));
    String trade = TradeLimit.of(table.input(), way);
    page.element("p", Capital.of(way.meaning()) + ". " + trade);
    ChartFigure.write(page, ResponseChart.of(table, way));
    page.scroll().open("table");
    List<String> names = table.thresholds().stream().map(Threshold::label).toList();
    head(page, "Season (limits in % of the live foliage)", names);
    page.open("tbody");
    for (Season season : table.seasons()) {
      page.open("tr");
      page.element("th", word(season), "scope", "row");
      for (Limit limit : table.limits(way, season)) {
        String setting = limit.setting().isEmpty() ? "" : " " + limit.setting();
        page.element("td", LimitWords.dose(limit) + setting);
      }
      page.close();
    }
    page.close().close().close().close();
  }

  private static void turns(Page page, LimitTable table) {
    List<String> turns = LimitWords.turns(table);
    if (turns.isEmpty()) {
      return;
    }
    page.open("section");
    page.element("h2", "Where more is not worse");
    page.element(
        "p",
        "Over the same futures fewer trees pass the line again at a larger dose. The lower dose stands"
            + " as the limit; the turn is told so that nobody smooths it away.");
    page.open("ul");
    turns.forEach(turn -> page.element("li", turn));
    page.close().close();
  }

  private static void head(Page page, String first, List<String> names) {
    page.open("thead").open("tr");
    page.element("th", first, "scope", "col");
    names.forEach(name -> page.element("th", name, "scope", "col"));
    page.close().close();
  }

  private static String word(Season season) {
    return season.name().toLowerCase(Locale.ROOT);
  }
}
