package longbough.runner.gentler.page;

import java.util.List;
import longbough.runner.chart.PlanChart;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Plan;
import longbough.runner.report.Capital;
import longbough.runner.report.CautionSection;
import longbough.runner.report.ChartFigure;
import longbough.runner.report.Page;
import longbough.runner.report.PageFrame;

/** The page: what is asked, the verdict, the plans beside each other, and the cautions. */
final class AdvicePage {

  private AdvicePage() {}

  static String of(Advice advice, Scene trees, String version) {
    return PageFrame.of("A gentler plan", "", page -> body(page, advice, trees, version));
  }

  private static void body(Page page, Advice advice, Scene trees, String version) {
    page.open("main");
    page.open("header");
    page.element("h1", "A gentler plan");
    page.element("p", advice.input().title(), "class", "lead");
    page.element("p", AdviceWords.tree(advice.input()) + ".");
    page.close();
    page.open("section");
    page.element("h2", "What is asked for");
    page.element(
        "p",
        "By the end of year "
            + advice.wishes().byYear()
            + ", and kept until year "
            + advice.wishes().untilYear()
            + ":");
    list(page, AdviceWords.asked(advice));
    page.close();
    page.open("section");
    page.element("h2", "What we advise");
    list(page, AdviceWords.verdict(advice));
    ChartFigure.write(page, PlanChart.of(advice));
    page.close();
    page.open("section");
    page.element("h2", "The plans");
    table(page, advice);
    page.open("ul");
    advice.plans().forEach(plan -> page.element("li", AdviceWords.sentence(plan, advice)));
    page.element("li", AdviceWords.sentence(advice.firstIdea(), advice));
    page.close();
    ChartFigure.write(page, trees);
    page.close();
    page.open("section");
    page.element("h2", "How to read this");
    list(page, AdviceWords.reading(advice));
    page.close();
    CautionSection.write(page);
    page.close();
    page.open("footer");
    page.element(
        "p",
        "Longbough "
            + version
            + ". Made by \u2018longbough gentler\u2019; the same version, scenario and seed give the same"
            + " page. The numbers stand in plans.csv and plan-wishes.csv.");
    page.close();
  }

  private static void table(Page page, Advice advice) {
    page.scroll().open("table");
    page.open("thead").open("tr");
    page.element("th", "Plan", "scope", "col");
    AdviceTable.heads(advice).forEach(head -> page.element("th", head, "scope", "col"));
    page.close().close().open("tbody");
    for (Plan plan : advice.all()) {
      page.open("tr");
      page.element("th", Capital.of(plan.regime().name()), "scope", "row");
      AdviceTable.cells(plan.outcome()).forEach(cell -> page.element("td", cell));
      page.close();
    }
    page.close().close().close();
  }

  private static void list(Page page, List<String> lines) {
    page.open("ul");
    lines.forEach(line -> page.element("li", line));
    page.close();
  }
}
