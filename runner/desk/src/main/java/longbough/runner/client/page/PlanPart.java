package longbough.runner.client.page;

import java.util.List;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Visit;
import longbough.runner.report.Page;
import longbough.runner.report.Picture;
import longbough.runner.report.RegimeKey;
import longbough.runner.verdict.LimitWarnings;

/** The plans one by one: what is done, and the tree over the years. */
final class PlanPart implements Part {
  /** Limits told for each plan where room is short. */
  private static final int MOST_ON_PAPER = 3;

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "plans", "class", "plans");
    for (int plan = 0; plan < input.plans().size(); plan++) {
      page.open("div", "class", "plan");
      if (plan == 0) {
        page.element("h2", input.say("plans.heading"), "id", "plans");
        page.element("p", input.say("plans.drawn"), "class", "note");
      }
      plan(page, input, plan);
      page.close();
    }
    if (input.strips().size() < input.plans().size()) {
      page.element(
          "p",
          input.say("plans.more", input.amounts().number(input.strips().size())),
          "class",
          "note");
    }
    page.close();
  }

  private static void plan(Page page, ClientInput input, int index) {
    Regime plan = input.plans().get(index).regime();
    RegimeKey.heading(page, "h3", plan.name(), index);
    page.open("p", "class", "what");
    page.text(plan.description().isBlank() ? "" : plan.description().strip() + " ");
    PlanWords words = new PlanWords(input);
    if (plan.visits().isEmpty()) {
      page.text(input.say("plan.none"));
    }
    for (Visit visit : plan.visits()) {
      page.text(words.visit(visit) + " ");
    }
    page.close();
    if (index < input.strips().size()) {
      Picture picture = input.strips().get(index);
      page.open("figure", "class", "strip").markup(picture.element()).close();
    }
    limits(page, input, LimitWarnings.of(input.plans().get(index)));
  }

  private static void limits(Page page, ClientInput input, List<String> warnings) {
    if (!warnings.isEmpty()) {
      List<String> clauses =
          warnings.stream().map(line -> line.replaceFirst("\\.$", "")).distinct().toList();
      int shown = input.paper() ? Math.min(MOST_ON_PAPER, clauses.size()) : clauses.size();
      String all = String.join(input.say("clause.separator") + " ", clauses.subList(0, shown));
      String more = input.amounts().number(clauses.size() - shown);
      String key = shown < clauses.size() ? "plan.limits_more" : "plan.limits";
      page.element("p", input.say(key, all, more), "class", "limit");
    }
  }
}
