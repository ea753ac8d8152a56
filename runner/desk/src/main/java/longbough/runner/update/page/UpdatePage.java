package longbough.runner.update.page;

import java.util.List;
import java.util.Map;
import longbough.runner.compare.Band;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.report.CautionSection;
import longbough.runner.report.ChartFigure;
import longbough.runner.report.Page;
import longbough.runner.report.PageFrame;
import longbough.runner.update.ForecastFigure;
import longbough.runner.update.Futures;
import longbough.runner.update.Outlook;
import longbough.runner.update.Updated;

/** The page: the visit against what was foretold, the forecast before and after, the cautions. */
final class UpdatePage {

  private UpdatePage() {}

  static String of(Updated updated, Map<ForecastFigure, Scene> charts, String version) {
    String title = updated.input().title() + " \u2013 seen again";
    return PageFrame.of(title, "", page -> body(page, updated, charts, version));
  }

  private static void body(
      Page page, Updated updated, Map<ForecastFigure, Scene> charts, String version) {
    page.open("main");
    page.open("header");
    page.element("h1", "Seen again after " + years(updated.visit().lastYear()));
    page.element("p", updated.input().title(), "class", "lead");
    page.close();
    page.element("p", UpdateWords.tree(updated) + ".");
    page.element("p", UpdateWords.followed(updated));
    page.open("ul", "class", updated.narrowed() ? "verdict" : "caution");
    UpdateWords.weighing(updated).forEach(line -> page.element("li", line));
    if (updated.narrowed()) {
      UpdateWords.verdict(updated).forEach(line -> page.element("li", line));
    }
    page.close();
    measured(page, updated);
    if (updated.narrowed()) {
      page.open("section").element("h2", "The forecast before and after");
      charts.values().forEach(chart -> ChartFigure.write(page, chart));
      page.close();
      for (int regime = 0; regime < updated.input().regimes().size(); regime++) {
        forecast(page, updated, regime);
      }
      shares(page, updated);
      page.open("section").element("h2", "How to read this").open("ul");
      UpdateWords.reading(updated).forEach(line -> page.element("li", line));
      page.close().close();
    }
    CautionSection.write(page);
    page.close();
    page.open("footer");
    page.element(
        "p",
        "Longbough "
            + version
            + ". Made by \u2018longbough update\u2019; the same version, scenario, visit and seed give the"
            + " same page. The numbers stand in measured.csv, weights.csv, forecast.csv and"
            + " verdict.csv.");
    page.close();
  }

  private static String years(int count) {
    return count + (count == 1 ? " year" : " years");
  }

  private static void measured(Page page, Updated updated) {
    page.open("section").element("h2", "What was measured, and what was foretold");
    page.scroll().open("table");
    head(page, "Figure", "Year", "Measured", "Foretold, nine in ten", "As far out or more");
    page.open("tbody");
    for (Outlook.Figure figure : updated.outlook().figures()) {
      String unit = UpdateWords.unit(figure);
      page.open("tr").element("th", figure.measured().quantity().label(), "scope", "row");
      page.element("td", Integer.toString(figure.measured().year()));
      page.element("td", UpdateWords.number(figure.measured().value()) + unit);
      page.element("td", UpdateWords.range(figure));
      page.element("td", UpdateWords.share(figure.pValue()));
      page.close();
    }
    page.close().close().close();
    page.element(
        "p",
        "Foretold: what a visitor would have read in the futures in which the tree lives or dies as"
            + " found ("
            + UpdateWords.share(updated.outlook().fitting())
            + " of them), errors of measuring and of the model included.",
        "class",
        "note");
    page.close();
  }

  private static void forecast(Page page, Updated updated, int regime) {
    int last = updated.input().years();
    page.open("section");
    page.element("h3", "In year " + last + " under \u201c" + updated.regime(regime) + "\u201d");
    page.scroll().open("table");
    head(page, "Figure", "Before: median (90 % band)", "After: median (90 % band)", "Width");
    page.open("tbody");
    for (ForecastFigure figure : ForecastFigure.values()) {
      Band before = updated.before(figure, regime);
      Band after = updated.after(figure, regime);
      String unit = figure.unit(updated.input().crew().currency());
      page.open("tr").element("th", figure.label() + ", " + unit, "scope", "row");
      page.element("td", UpdateLines.band(figure, before, last));
      page.element("td", UpdateLines.band(figure, after, last));
      page.element("td", UpdateLines.width(figure, before, after, last));
      page.close();
    }
    page.close().close().close().close();
  }

  private static void shares(Page page, Updated updated) {
    List<Updated.Turn> turns = updated.turns();
    if (turns.isEmpty()) {
      return;
    }
    page.open("section");
    page.element("h2", "In how many futures a plan is better");
    page.scroll().open("table");
    head(
        page,
        "Plan against \u201c" + updated.regime(0) + "\u201d",
        "Figure",
        "Better before",
        "Better after",
        "Worse before",
        "Worse after");
    page.open("tbody");
    for (Updated.Turn turn : turns) {
      Futures.Share before = turn.before();
      Futures.Share after = turn.after();
      page.open("tr").element("th", updated.regime(turn.regime()), "scope", "row");
      page.element("td", turn.metric().label(), "class", "word");
      page.element("td", UpdateWords.share(before.better()));
      page.element("td", UpdateWords.share(after.better()));
      page.element("td", UpdateWords.share(before.worse()));
      page.element("td", UpdateWords.share(after.worse()));
      page.close();
    }
    page.close().close().close().close();
  }

  private static void head(Page page, String... heads) {
    page.open("thead").open("tr");
    for (String head : heads) {
      boolean word = head.equals("Figure");
      page.element("th", head, "scope", "col", "class", word ? "word" : "number");
    }
    page.close().close();
  }
}
