package longbough.runner.report;

import java.util.List;
import longbough.model.history.VisitRow;
import longbough.runner.compare.RegimeResult;
import longbough.runner.verdict.Figures;
import longbough.runner.verdict.OperationWords;

/** Visits and costs, as they come in the median future. */
final class VisitSection implements Section {
  private static final double CM2 = 10_000;
  private static final String COLUMNS = "9";

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
    page.scroll().open("table", "class", "visits");
    head(page, input.currency());
    for (int regime = 0; regime < input.comparison().regimes().size(); regime++) {
      regime(page, input, regime);
    }
    page.close().close();
    page.close();
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

  private static void regime(Page page, ReportInput input, int regime) {
    RegimeResult result = input.comparison().regimes().get(regime);
    List<VisitRow> visits = result.medianFuture().visits();
    page.open("tbody").open("tr");
    RegimeKey.heading(
        page,
        "th",
        result.name(),
        regime,
        "scope",
        "rowgroup",
        "colspan",
        COLUMNS,
        "class",
        "group");
    page.close();
    if (visits.isEmpty()) {
      page.open("tr").element("td", "No visit.", "colspan", COLUMNS, "class", "word").close();
    }
    for (int first = 0, next; first < visits.size(); first = next) {
      next = first + 1;
      while (next < visits.size() && together(visits.get(first), visits.get(next))) {
        next++;
      }
      row(page, visits.subList(first, next));
    }
    if (!visits.isEmpty()) {
      total(page, visits);
    }
    page.close();
  }

  private static boolean together(VisitRow one, VisitRow other) {
    return one.year() == other.year() && one.season() == other.season();
  }

  /** One visit with all its work. */
  private static void row(Page page, List<VisitRow> visit) {
    double kept = 1;
    double largest = 0;
    StringBuilder work = new StringBuilder();
    for (VisitRow done : visit) {
      kept *= 1 - done.foliageRemovedFraction();
      largest = Math.max(largest, done.largestCutM());
      work.append(work.isEmpty() ? "" : ", ").append(OperationWords.done(done.operation()));
    }
    page.open("tr").element("td", Integer.toString(visit.get(0).year()), "class", "word");
    page.element("td", Words.of(visit.get(0).season()), "class", "word");
    page.element("td", work.toString(), "class", "word");
    page.element("td", Figures.percent(1 - kept));
    page.element("td", Integer.toString(visit.stream().mapToInt(VisitRow::cuts).sum()));
    page.element("td", largest > 0 ? Words.cm(largest) : Figures.number(Double.NaN));
    sums(page, visit);
    page.close();
  }

  private static void total(Page page, List<VisitRow> visits) {
    page.open("tr", "class", "sum").element("th", "Sum", "scope", "row", "colspan", "4");
    page.element("td", Integer.toString(visits.stream().mapToInt(VisitRow::cuts).sum()));
    page.element("td", "");
    sums(page, visits);
    page.close();
  }

  private static void sums(Page page, List<VisitRow> visits) {
    page.element("td", Figures.number(CM2 * visits.stream().mapToDouble(VisitRow::woundM2).sum()));
    page.element("td", Figures.number(visits.stream().mapToDouble(VisitRow::crewHours).sum()));
    page.element("td", Figures.number(visits.stream().mapToDouble(VisitRow::cost).sum()));
  }
}
