package longbough.runner.client.page;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import longbough.runner.report.Page;
import longbough.runner.report.RegimeKey;
import longbough.runner.verdict.InspectionYears;

/** What to look at on the tree and when. */
final class InspectPart implements Part {

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "inspect");
    page.element("h2", input.say("inspect.heading"), "id", "inspect");
    page.open("ul");
    page.element("li", input.say("inspect.before"));
    page.element("li", input.say("inspect.yearly"));
    page.element("li", input.say("inspect.storm"));
    page.close();
    page.open(
        "div",
        "class",
        "scroll",
        "tabindex",
        "0",
        "role",
        "region",
        "aria-labelledby",
        "inspect-caption");
    page.open("table", "class", "words");
    page.element("caption", input.say("inspect.caption"), "id", "inspect-caption");
    page.open("thead").open("tr");
    for (String head : List.of("glance.plan", "inspect.cuts", "inspect.trunk", "inspect.crown")) {
      page.element("th", input.say(head), "scope", "col", "class", "word");
    }
    page.close().close().open("tbody");
    for (int plan = 0; plan < input.plans().size(); plan++) {
      row(page, input, plan);
    }
    page.close().close().close();
    page.element(
        "p",
        input.say(
            "inspect.note",
            input.amounts().percent(InspectionYears.STRENGTH_MARK),
            input.amounts().percent(InspectionYears.RESERVE_MARK)),
        "class",
        "note");
    page.close();
  }

  private static void row(Page page, ClientInput input, int plan) {
    InspectionYears when = InspectionYears.of(input.plans().get(plan), input.comparison().years());
    page.open("tr");
    RegimeKey.heading(page, "th", input.plans().get(plan).name(), plan, "scope", "row");
    String cuts =
        when.afterVisits().stream()
            .map(year -> input.amounts().number(year))
            .collect(Collectors.joining(", "));
    page.element(
        "td",
        cuts.isEmpty()
            ? input.say("inspect.no_cut")
            : input.say("inspect.in_years", when.afterVisits().size(), cuts),
        "class",
        "word");
    page.element("td", from(input, when.weakFrom()), "class", "word");
    page.element("td", from(input, when.lowFrom()), "class", "word");
    page.close();
  }

  private static String from(ClientInput input, OptionalInt year) {
    return year.isPresent()
        ? input.say("inspect.from_year", input.amounts().number(year.getAsInt()))
        : input.say("inspect.as_usual");
  }
}
