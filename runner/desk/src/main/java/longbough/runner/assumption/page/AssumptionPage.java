package longbough.runner.assumption.page;

import java.util.List;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.AssumptionWords;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.Shift;
import longbough.runner.chart.AssumptionChart;
import longbough.runner.report.CautionSection;
import longbough.runner.report.ChartFigure;
import longbough.runner.report.Page;
import longbough.runner.report.PageFrame;
import longbough.shared.source.Sourced;

/** The page: verdict as things stand, picture, tables, how to read them, and the cautions. */
final class AssumptionPage {

  private AssumptionPage() {}

  static String of(Assumptions all, String version) {
    String title = all.input().title() + " \u2013 what the verdict leans on";
    return PageFrame.of(title, "", page -> body(page, all, version));
  }

  private static void body(Page page, Assumptions all, String version) {
    page.open("main");
    page.open("header");
    page.element("h1", "What the verdict leans on");
    page.element("p", all.input().title(), "class", "lead");
    page.close();
    page.element("p", Sentences.played(all));
    list(page, "The verdict as things stand", Sentences.preferred(all));
    page.open("section");
    page.element("h2", "The heaviest parameters");
    ChartFigure.write(page, AssumptionChart.of(all));
    table(page, all);
    page.close();
    behind(page, all);
    list(page, "The heaviest for each measure", Sentences.byMeasure(all));
    list(page, "Where another regime is preferred within a range", Sentences.turning(all));
    groups(page, all);
    list(page, "Not playable at an end of the range", Sentences.failed(all));
    list(page, "How to read this", Sentences.reading(all));
    CautionSection.write(page);
    page.close();
    page.open("footer");
    page.element(
        "p",
        "Longbough "
            + version
            + ". Made by \u2018longbough assumptions\u2019; the same version, scenario and seed give the"
            + " same page. Every parameter stands in assumptions.csv, every change in shifts.csv.");
    page.close();
  }

  private static void list(Page page, String heading, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    page.open("section").element("h2", heading).open("ul");
    lines.forEach(line -> page.element("li", line));
    page.close().close();
  }

  private static void table(Page page, Assumptions all) {
    List<Assumption> flagged = all.flagged();
    page.scroll().open("table").open("thead").open("tr");
    for (String head : List.of("Parameter", "Value (range)", "Basis")) {
      page.element("th", head, "scope", "col", "class", "word");
    }
    page.element("th", "Effect", "scope", "col");
    page.element("th", "On the lead of", "scope", "col", "class", "word");
    page.close().close().open("tbody");
    for (Assumption one : all.first(AssumptionChart.SHOWN)) {
      Shift shift = one.strongest();
      boolean flag = flagged.contains(one);
      page.open("tr").element("th", one.parameter().name(), "scope", "row");
      page.element("td", AssumptionWords.value(one.parameter()), "class", "word");
      page.open("td", "class", "word");
      if (flag) {
        page.element("strong", Sentences.basis(one, true));
      } else {
        page.text(Sentences.basis(one, false));
      }
      page.close();
      page.element("td", AssumptionWords.effect(one.weight()));
      String pair =
          Sentences.name(all, shift.best()) + " over " + Sentences.name(all, shift.other());
      String measure = AssumptionWords.measure(shift.metric());
      String turns = one.turns().isEmpty() ? "" : "; turns the verdict";
      page.element("td", pair + ", " + measure + turns, "class", "word");
      page.close();
    }
    page.close().close().close();
  }

  /** Of each of the first ten what its number says and who says so. */
  private static void behind(Page page, Assumptions all) {
    List<Assumption> first = all.first(Assumptions.LOOKED_AT);
    if (first.isEmpty()) {
      return;
    }
    page.open("section").element("h2", "What stands behind the first ten").open("ul");
    for (Assumption one : first) {
      Sourced row = one.parameter();
      page.open("li").element("strong", row.name()).text(", " + Sentences.behind(row)).close();
    }
    page.close().close();
  }

  private static void groups(Page page, Assumptions all) {
    page.open("section").element("h2", "By group");
    page.scroll().open("table").open("thead").open("tr");
    page.element("th", "Group", "scope", "col");
    page.element("th", "Parameters with a range", "scope", "col");
    page.element(
        "th", "Effect " + AssumptionWords.effect(Assumptions.MOVES) + " or more", "scope", "col");
    page.element("th", "of these not published", "scope", "col");
    page.element("th", "Heaviest", "scope", "col", "class", "word");
    page.close().close().open("tbody");
    for (Assumptions.Group group : all.groups()) {
      Assumption heaviest = group.heaviest();
      page.open("tr").element("th", group.name(), "scope", "row");
      page.element("td", Integer.toString(group.members().size()));
      page.element("td", Long.toString(group.moving()));
      page.element("td", Long.toString(group.movingUnpublished()));
      String heavy = heaviest.parameter().name() + " " + AssumptionWords.effect(heaviest.weight());
      page.element("td", heaviest.weight() > 0 ? heavy : "", "class", "word");
      page.close();
    }
    page.close().close().close().close();
  }
}
