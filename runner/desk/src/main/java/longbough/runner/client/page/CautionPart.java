package longbough.runner.client.page;

import java.util.List;
import longbough.runner.report.Page;

/** What the report is not, and what stands above it. */
final class CautionPart implements Part {
  private static final List<String> CAUTIONS =
      List.of(
          "caution.clearance",
          "caution.inspection",
          "caution.lines",
          "caution.law",
          "caution.wildlife",
          "caution.practice");

  private static final List<String> LIMITS =
      List.of("limit.checks", "limit.portrait", "limit.differences", "limit.cost");

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "cautions");
    page.element("h2", input.say("cautions.heading"), "id", "cautions");
    page.open("ul", "class", "caution");
    CAUTIONS.forEach(key -> page.element("li", input.say(key)));
    page.close();
    page.element("h3", input.say("limits.heading"));
    page.open("ul");
    LIMITS.forEach(key -> page.element("li", input.say(key)));
    page.close();
    if (!input.client().closing().isEmpty()) {
      page.element("p", input.client().closing(), "class", "own");
    }
    page.close();
  }
}
