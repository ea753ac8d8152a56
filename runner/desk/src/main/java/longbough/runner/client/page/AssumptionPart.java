package longbough.runner.client.page;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.Shift;
import longbough.runner.client.words.Amounts;
import longbough.runner.report.Page;
import longbough.shared.source.Basis;
import longbough.shared.source.Sourced;

/** What was assumed, how well the numbers are known, and which of them the verdict leans on. */
final class AssumptionPart implements Part {
  private static final int SHOWN = 8;
  private static final double PERCENT = 100;

  private static final List<String> MODEL =
      List.of("assumed.place", "assumed.weather", "assumed.limbs", "assumed.blind", "assumed.dead");

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "assumptions");
    page.element("h2", input.say("assumptions.heading"), "id", "assumptions");
    page.open("ul");
    MODEL.forEach(key -> page.element("li", input.say(key)));
    page.close();
    page.element("p", known(input));
    page.element("h3", input.say("leaning.heading"));
    if (input.leaning().isPresent()) {
      leaning(page, input, input.leaning().get());
    } else {
      page.element("p", input.say("leaning.untried"));
    }
    filledIn(page, input);
    page.close();
  }

  private static String known(ClientInput input) {
    Map<Basis, Integer> counts = new EnumMap<>(Basis.class);
    int sampled = 0;
    for (Sourced row : input.asked().parameters().rows()) {
      counts.merge(row.basis(), 1, Integer::sum);
      sampled += row.sampled() ? 1 : 0;
    }
    Amounts amounts = input.amounts();
    List<String> parts =
        counts.entrySet().stream()
            .map(
                entry ->
                    input.say(
                        "known.part",
                        amounts.number(entry.getValue()),
                        input.say("basis." + Amounts.key(entry.getKey()))))
            .toList();
    int all = input.asked().parameters().rows().size();
    return input.say(
        "known.all", amounts.number(all), amounts.list(parts), amounts.number(sampled));
  }

  private static void filledIn(Page page, ClientInput input) {
    List<String> lines = input.asked().filledIn();
    page.element("h3", input.say("filled.heading"));
    if (lines.isEmpty()) {
      page.element("p", input.say("filled.nothing"));
      return;
    }
    if (input.paper()) {
      page.element("p", String.join(" \u00b7 ", lines), "class", "small");
      return;
    }
    page.open("ul", "class", "small two");
    lines.forEach(line -> page.element("li", line));
    page.close();
  }

  private static void leaning(Page page, ClientInput input, Assumptions all) {
    List<Assumption> first = all.first(SHOWN);
    Amounts amounts = input.amounts();
    page.element(
        "p",
        input.say(
            "leaning.tried",
            amounts.number(all.ranked().size()),
            amounts.futures(all.input().members()),
            amounts.number(all.turning().size())));
    if (first.isEmpty()) {
      page.element("p", input.say("leaning.none"));
      return;
    }
    page.open(
        "div",
        "class",
        "scroll",
        "tabindex",
        "0",
        "role",
        "region",
        "aria-labelledby",
        "leaning-caption");
    page.open("table").element("caption", input.say("leaning.caption"), "id", "leaning-caption");
    page.open("thead").open("tr");
    for (String head : List.of("leaning.parameter", "leaning.basis", "leaning.question")) {
      page.element("th", input.say(head), "scope", "col", "class", "word");
    }
    page.element("th", input.say("leaning.effect"), "scope", "col").close().close();
    page.open("tbody");
    first.forEach(one -> row(page, input, one));
    page.close().close().close();
    page.element("p", input.say("leaning.note"), "class", "note");
  }

  private static void row(Page page, ClientInput input, Assumption one) {
    Shift shift = one.strongest();
    String basis = input.say("basis." + Amounts.key(one.parameter().basis()));
    page.open("tr").element("th", one.parameter().name(), "scope", "row");
    page.open("td", "class", "word");
    if (one.unpublished()) {
      page.element("strong", basis);
    } else {
      page.text(basis);
    }
    page.close();
    String turns = one.turns().isEmpty() ? "leaning.moves" : "leaning.turns";
    page.element(
        "td",
        input.say(turns, input.say("question." + Amounts.key(shift.metric()))),
        "class",
        "word");
    page.element(
        "td", input.say("unit.percent", input.amounts().number(Math.rint(PERCENT * one.weight()))));
    page.close();
  }
}
