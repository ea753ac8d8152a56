package longbough.runner.client.page;

import java.util.List;
import longbough.runner.report.Page;
import longbough.runner.report.RegimeKey;

/** Why: how a tree answers cuts, and what happens in one future out of the middle. */
final class WhyPart implements Part {
  private static final int MOST_YEARS = 4;

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "why");
    page.element("h2", input.say("why.heading"), "id", "why");
    page.element("p", input.say("why.tree"));
    page.element("p", input.say("why.future"), "class", "note");
    page.open("div", "class", "pairs");
    for (int plan = 0; plan < input.plans().size(); plan++) {
      page.open("div", "class", "pair");
      RegimeKey.heading(page, "h3", input.plans().get(plan).name(), plan);
      List<String> lines =
          EventPhrases.of(input, input.plans().get(plan).medianFuture().events(), MOST_YEARS);
      if (lines.isEmpty()) {
        page.element("p", input.say("why.nothing"));
      } else {
        page.open("ul", "class", "chain");
        lines.forEach(line -> page.element("li", line));
        page.close();
      }
      page.close();
    }
    page.close().close();
  }
}
