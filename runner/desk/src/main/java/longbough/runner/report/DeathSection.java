package longbough.runner.report;

import java.util.List;
import longbough.model.state.CauseOfDeath;
import longbough.runner.chart.CauseBars;
import longbough.runner.verdict.Figures;

/** What the tree dies of under each regime, as shares of all futures. */
final class DeathSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    CauseBars bars = CauseBars.of(input.comparison());
    List<CauseOfDeath> causes = bars.occurring();
    page.open("section", "aria-labelledby", "deaths", "class", "figures");
    page.element("h2", "What the tree dies of", "id", "deaths");
    if (causes.isEmpty()) {
      page.element("p", "It dies in none of the futures.");
      page.close();
      return;
    }
    page.scroll().open("table");
    page.element(
        "caption",
        "Futures out of a hundred in which each cause has ended its life by the last year.");
    page.open("thead").open("tr").element("th", "Cause", "scope", "col");
    for (int regime = 0; regime < bars.bars().size(); regime++) {
      RegimeKey.heading(page, "th", bars.bars().get(regime).regime(), regime, "scope", "col");
    }
    page.close().close().open("tbody");
    causes.forEach(cause -> row(page, bars, cause));
    page.open("tr").element("th", "still alive", "scope", "row");
    bars.bars().forEach(bar -> page.element("td", Figures.number(100 * bar.alive())));
    page.close().close().close().close();
    page.element(
        "p",
        "Causes compete: a tree uprooted early can no longer starve. A tree that dies slowly of several"
            + " things is counted under the one that weighed most in its last year. In charts/ the same"
            + " stands as causes-of-death, and by year in survival.csv.",
        "class",
        "note");
    page.close();
  }

  private static void row(Page page, CauseBars bars, CauseOfDeath cause) {
    page.open("tr").element("th", cause.label(), "scope", "row");
    bars.bars().forEach(bar -> page.element("td", Figures.number(100 * bar.causes().get(cause))));
    page.close();
  }
}
