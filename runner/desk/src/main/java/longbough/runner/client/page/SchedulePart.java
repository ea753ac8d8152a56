package longbough.runner.client.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import longbough.model.history.VisitRow;
import longbough.runner.client.words.Amounts;
import longbough.runner.compare.Band;
import longbough.runner.compare.Bands;
import longbough.runner.report.Page;
import longbough.runner.report.RegimeKey;

/** The visits of the leading plan with their cost, and what each plan has cost by when. */
final class SchedulePart implements Part {
  private static final double[] MILESTONES = {1.0 / 6, 1.0 / 3, 2.0 / 3, 1};

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "schedule");
    page.element("h2", input.say("schedule.heading"), "id", "schedule");
    page.element(
        "p",
        input.say(
            "schedule.price",
            input.say(
                "unit.money",
                input.amounts().number(input.asked().crew().pricePerHour()),
                input.amounts().currency())),
        "class",
        "note");
    visits(page, input, Lead.of(input).plan());
    if (input.plans().size() > 1) {
      milestones(page, input);
    }
    ChartPart.figure(page, input.charts().get(input.charts().size() - 1));
    page.close();
  }

  private static void visits(Page page, ClientInput input, int plan) {
    List<List<VisitRow>> days = days(input.plans().get(plan).medianFuture().visits());
    if (days.isEmpty()) {
      page.element("p", input.say("schedule.none", input.name(plan)));
      return;
    }
    scroll(page, "visits-caption");
    page.element("caption", input.say("schedule.visits", input.name(plan)), "id", "visits-caption");
    page.open("thead").open("tr");
    word(page, "th", input.say("schedule.year"), "scope", "col");
    word(page, "th", input.say("schedule.season"), "scope", "col");
    word(page, "th", input.say("schedule.work"), "scope", "col");
    page.element("th", input.say("schedule.foliage"), "scope", "col");
    page.element("th", input.say("schedule.hours"), "scope", "col");
    page.element("th", input.say("schedule.cost", input.amounts().currency()), "scope", "col");
    page.element("th", input.say("schedule.sum", input.amounts().currency()), "scope", "col");
    page.close().close().open("tbody");
    double sum = 0;
    for (List<VisitRow> day : days) {
      sum += day.stream().mapToDouble(VisitRow::cost).sum();
      day(page, input, day, sum);
    }
    page.close().close().close();
  }

  private static void day(Page page, ClientInput input, List<VisitRow> day, double sum) {
    Amounts amounts = input.amounts();
    double kept = 1;
    List<String> work = new ArrayList<>();
    for (VisitRow row : day) {
      kept *= 1 - row.foliageRemovedFraction();
      work.add(input.say("done." + row.operation()));
    }
    page.open("tr");
    word(page, "th", amounts.number(day.get(0).year()), "scope", "row");
    word(page, "td", input.say("season." + Amounts.key(day.get(0).season())));
    word(page, "td", amounts.list(work));
    page.element("td", amounts.percent(1 - kept));
    page.element("td", amounts.about(day.stream().mapToDouble(VisitRow::crewHours).sum()));
    page.element("td", amounts.bareMoney(day.stream().mapToDouble(VisitRow::cost).sum()));
    page.element("td", amounts.bareMoney(sum));
    page.close();
  }

  private static void milestones(Page page, ClientInput input) {
    Amounts amounts = input.amounts();
    TreeSet<Integer> years = milestoneYears(input.comparison().years());
    scroll(page, "milestones-caption");
    page.element(
        "caption", input.say("milestones.caption", amounts.currency()), "id", "milestones-caption");
    page.open("thead").open("tr");
    page.element("th", input.say("glance.plan"), "scope", "col");
    word(page, "th", input.say("milestones.visits"), "scope", "col");
    for (int year : years) {
      page.element("th", input.say("milestones.year", amounts.number(year)), "scope", "col");
    }
    page.close().close().open("tbody");
    for (int plan = 0; plan < input.plans().size(); plan++) {
      page.open("tr");
      RegimeKey.heading(page, "th", input.plans().get(plan).name(), plan, "scope", "row");
      word(page, "td", visitYears(input, plan));
      int last = input.comparison().years();
      Band band = Bands.cumulativeCost(input.plans().get(plan), last, 0);
      for (int year : years) {
        page.open("td").text(amounts.bareMoney(band.median()[year]));
        String low = amounts.bareMoney(band.low()[year]);
        String high = amounts.bareMoney(band.high()[year]);
        page.element("small", input.say("glance.span", low, high)).close();
      }
      page.close();
    }
    page.close().close().close();
  }

  private static String visitYears(ClientInput input, int plan) {
    List<String> years =
        input.plans().get(plan).medianFuture().visits().stream()
            .map(VisitRow::year)
            .distinct()
            .map(year -> input.amounts().number(year))
            .toList();
    return years.isEmpty() ? input.say("milestones.none") : String.join(", ", years);
  }

  /** A sixth, a third and two thirds of the years, and the last. */
  static TreeSet<Integer> milestoneYears(int years) {
    TreeSet<Integer> result = new TreeSet<>();
    for (double share : MILESTONES) {
      result.add((int) Math.max(1, Math.round(share * years)));
    }
    return result;
  }

  /** Rows of the same visit together. */
  private static List<List<VisitRow>> days(List<VisitRow> rows) {
    List<List<VisitRow>> days = new ArrayList<>();
    for (VisitRow row : rows) {
      VisitRow before = days.isEmpty() ? null : days.get(days.size() - 1).get(0);
      if (before == null || before.year() != row.year() || before.season() != row.season()) {
        days.add(new ArrayList<>());
      }
      days.get(days.size() - 1).add(row);
    }
    return days;
  }

  private static void scroll(Page page, String caption) {
    page.open(
        "div", "class", "scroll", "tabindex", "0", "role", "region", "aria-labelledby", caption);
    page.open("table");
  }

  private static void word(Page page, String element, String text, String... attributes) {
    String[] all = Arrays.copyOf(attributes, attributes.length + 2);
    all[attributes.length] = "class";
    all[attributes.length + 1] = "word";
    page.element(element, text, all);
  }
}
