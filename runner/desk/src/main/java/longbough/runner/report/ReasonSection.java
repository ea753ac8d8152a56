package longbough.runner.report;

import java.util.List;
import longbough.runner.compare.RegimeResult;
import longbough.runner.verdict.Chain;

/** Why: the dated chain of events of the median future, regime by regime. */
final class ReasonSection implements Section {
  private static final int LINKS = 12;

  /** From here on a chain is printed in two columns. */
  private static final int LONG = 5;

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "reasons", "class", "new-page");
    page.element("h2", "Why: what happens in the median future", "id", "reasons");
    page.element(
        "p",
        "One future out of the middle (number "
            + input.comparison().medianMember()
            + " in the tidy files), the same under every regime; the years that tell most.");
    page.open("div", "class", "regimes");
    for (int regime = 0; regime < input.comparison().regimes().size(); regime++) {
      page.open("div");
      chain(page, input.comparison().regimes().get(regime), regime);
      page.close();
    }
    page.close();
    page.close();
  }

  private static void chain(Page page, RegimeResult result, int regime) {
    RegimeKey.heading(page, "h3", result.name(), regime);
    List<Chain.Link> links = Chain.telling(result.medianFuture().events(), LINKS);
    if (links.isEmpty()) {
      page.element("p", "Nothing out of the ordinary happens.");
      return;
    }
    page.open("ol", "class", links.size() > LONG ? "chain long" : "chain");
    for (Chain.Link link : links) {
      page.open("li").element("span", "Year " + link.year(), "class", "year");
      page.text(": " + String.join("; ", link.phrases()) + ".").close();
    }
    page.close();
  }
}
