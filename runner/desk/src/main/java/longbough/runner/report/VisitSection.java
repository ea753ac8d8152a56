package longbough.runner.report;

import java.util.List;
import longbough.model.history.VisitRow;
import longbough.runner.compare.RegimeResult;
import longbough.runner.verdict.Figures;
import longbough.runner.verdict.OperationWords;

/** Visits and costs, as they come in the median future. */
final class VisitSection implements Section {
  private static final double CM2 = 10_000;

  private static final List<String> NUMBERS =
      List.of("Foliage removed", "Cuts", "Largest cut", "Wound, cm\u00b2", "Crew hours");

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "visits");
    page.element("h2", "Visits and costs", "id", "visits");
    page.element(
        "p",
        "As they come in the median future; costs as paid in their year, at "
            + Figures.number(input.comparison().input().crew().pricePerHour())
            + "\u00a0"
            + input.currency()
            + " a crew hour.");
    for (int regime = 0; regime < input.comparison().regimes().size(); regime++) {
      regime(page, input, regime);
    }
    page.close();
  }

  private static void regime(Page page, ReportInput input, int regime) {
    RegimeResult result = input.comparison().regimes().get(regime);
    RegimeKey.heading(page, "h3", result.name(), regime);
    List<VisitRow> visits = result.medianFuture().visits();
    if (visits.isEmpty()) {
      page.element("p", "No visit.");
      return;
    }
    page.open("div", "class", "scroll").open("table");
    head(page, input.currency());
    page.open("tbody");
    visits.forEach(visit -> row(page, visit));
    page.close();
    total(page, visits);
    page.close().close();
  }

  private static void head(Page page, String currency) {
    page.open("thead").open("tr");
    page.element("th", "Year", "scope", "col");
    page.element("th", "Season", "scope", "col", "class", "word");
    page.element("th", "Work", "scope", "col", "class", "word");
    NUMBERS.forEach(heading -> page.element("th", heading, "scope", "col"));
    page.element("th", "Cost, " + currency, "scope", "col");
    page.close().close();
  }

  private static void row(Page page, VisitRow visit) {
    page.open("tr").element("td", Integer.toString(visit.year()), "class", "word");
    page.element("td", Words.of(visit.season()), "class", "word");
    page.element("td", OperationWords.done(visit.operation()), "class", "word");
    page.element("td", Figures.percent(visit.foliageRemovedFraction()));
    page.element("td", Integer.toString(visit.cuts()));
    page.element("td", Words.cm(visit.largestCutM()));
    page.element("td", Figures.number(CM2 * visit.woundM2()));
    page.element("td", Figures.number(visit.crewHours()));
    page.element("td", Figures.number(visit.cost()));
    page.close();
  }

  private static void total(Page page, List<VisitRow> visits) {
    page.open("tfoot").open("tr").element("th", "Sum", "scope", "row", "colspan", "4");
    page.element("td", Integer.toString(visits.stream().mapToInt(VisitRow::cuts).sum()));
    page.element("td", "");
    page.element("td", Figures.number(CM2 * visits.stream().mapToDouble(VisitRow::woundM2).sum()));
    page.element("td", Figures.number(visits.stream().mapToDouble(VisitRow::crewHours).sum()));
    page.element("td", Figures.number(visits.stream().mapToDouble(VisitRow::cost).sum()));
    page.close().close();
  }
}
