package longbough.runner.client.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.client.words.Amounts;
import longbough.runner.compare.Metric;
import longbough.runner.report.Page;

/** The verdict in plain words with its certainty, and the plans at a glance. */
final class VerdictPart implements Part {

  @Override
  public void write(Page page, ClientInput input) {
    Lead lead = Lead.of(input);
    page.open("section", "aria-labelledby", "verdict");
    page.element("h2", input.say("verdict.heading"), "id", "verdict");
    page.open("div", "class", "verdict");
    page.element("p", lead(input, lead), "class", "lead");
    if (!input.client().advice().isEmpty()) {
      page.element("p", input.client().advice(), "class", "own");
    }
    page.element("p", alive(input));
    if (input.plans().size() > 1) {
      for (int other = 0; other < input.plans().size(); other++) {
        if (other != lead.plan()) {
          versus(page, input, lead.plan(), other);
        }
      }
    }
    page.close();
    page.element("p", input.say("caution.clearance"), "class", "clearance");
    GlanceTable.write(page, input);
    page.element(
        "p", input.say("verdict.future", input.amounts().futures(members(input))), "class", "note");
    page.close();
  }

  private static String lead(ClientInput input, Lead lead) {
    Amounts amounts = input.amounts();
    String name = input.name(lead.plan());
    if (input.plans().size() == 1) {
      return input.say("verdict.single", name);
    }
    List<String> wins =
        lead.wins().stream().map(metric -> input.say("question." + Amounts.key(metric))).toList();
    if (lead.recommended()) {
      return wins.isEmpty()
          ? input.say("verdict.recommended", name)
          : input.say("verdict.recommended_best", name, amounts.list(wins));
    }
    return wins.isEmpty()
        ? input.say("verdict.none_best", name)
        : input.say("verdict.best", amounts.number(input.plans().size()), name, amounts.list(wins));
  }

  private static String alive(ClientInput input) {
    Amounts amounts = input.amounts();
    List<String> shares = new ArrayList<>();
    for (int plan = 0; plan < input.plans().size(); plan++) {
      double share = input.summary().get(plan, Metric.ALIVE_AT_END).mean();
      String lives = amounts.number(Math.round(share * members(input)));
      shares.add(
          plan == 0
              ? input.say(
                  "verdict.alive_first", lives, amounts.futures(members(input)), input.name(plan))
              : input.say("verdict.alive_next", lives, input.name(plan)));
    }
    return input.say(
        "verdict.alive", amounts.years(input.comparison().years()), amounts.list(shares));
  }

  private static void versus(Page page, ClientInput input, int plan, int other) {
    Versus versus = Versus.of(input, plan, other);
    page.element("h3", input.say("versus.heading", input.name(plan), input.name(other)));
    String list = input.paper() ? "p" : "ul";
    page.open(list, "class", "versus");
    line(page, input, "versus.for", versus.gains());
    line(page, input, "versus.against", versus.losses());
    line(page, input, "versus.open", versus.open());
    page.close();
  }

  /** A line on the screen; on paper, where room is short, one sentence after the other. */
  private static void line(Page page, ClientInput input, String key, List<String> clauses) {
    if (clauses.isEmpty()) {
      return;
    }
    page.open(input.paper() ? "span" : "li").element("strong", input.say(key));
    String all = String.join(input.say("clause.separator") + " ", clauses);
    page.text(" " + all + input.say("clause.end") + " ").close();
  }

  private static int members(ClientInput input) {
    return input.comparison().members();
  }
}
