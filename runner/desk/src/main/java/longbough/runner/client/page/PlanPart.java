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

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "plans", "class", "plans");
    page.element("h2", input.say("plans.heading"), "id", "plans");
    page.element("p", input.say("plans.drawn"), "class", "note");
    for (int plan = 0; plan < input.plans().size(); plan++) {
      page.open("div", "class", "plan");
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
      String all = String.join(input.say("clause.separator") + " ", clauses);
      page.element("p", input.say("plan.limits", all), "class", "limit");
    }
  }
}
