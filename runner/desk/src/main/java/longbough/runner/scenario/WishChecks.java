package longbough.runner.scenario;

import longbough.runner.scenario.written.Scenario;
import longbough.runner.scenario.written.WrittenWish;
import longbough.runner.scenario.written.WrittenWishes;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.Plain;

/** What must hold between wishes, the tree and the regimes. */
final class WishChecks {

  private final Mistakes mistakes;

  private WishChecks(Mistakes mistakes) {
    this.mistakes = mistakes;
  }

  static void check(Scenario scenario, Mistakes mistakes) {
    WishChecks checks = new WishChecks(mistakes);
    scenario
        .wishes()
        .ifPresent(
            wishes -> {
              checks.firstIdea(scenario, wishes);
              checks.years(wishes);
              wishes.asked().forEach(checks::wish);
            });
  }

  private void firstIdea(Scenario scenario, WrittenWishes wishes) {
    Given<String> name = wishes.firstIdea();
    if (name.present()
        && scenario.regimes().stream()
            .noneMatch(regime -> name.value().equals(regime.name().or("")))) {
      mistakes.add(
          name.place(),
          name.field(),
          "no regime named " + Mistakes.quoted(name.value()),
          "the name of one of the regimes",
          "name a regime of this file, or leave first_idea out");
    }
  }

  private void years(WrittenWishes wishes) {
    long by = wishes.byYear().or((long) Presets.fallback("wishes.by_year"));
    long until = wishes.untilYear().or((long) Presets.fallback("wishes.until_year"));
    if (until < by) {
      Given<Long> at = wishes.untilYear().present() ? wishes.untilYear() : wishes.byYear();
      mistakes.add(
          at.place(),
          at.field(),
          "kept until year " + until + " what is there by year " + by,
          "until_year at or after by_year",
          "change one of the two years");
    }
  }

  private void wish(WrittenWish wish) {
    boolean sector = wish.numbers().containsKey("from_bearing_deg");
    if (sector) {
      bearings(
          wish.path(), wish.number("from_bearing_deg"), wish.number("to_bearing_deg"), mistakes);
    }
    if (wish.numbers().containsKey("from_height_m")) {
      Given<Double> to = wish.number("to_height_m");
      double from = wish.number("from_height_m").or(Double.NaN);
      if (to.or(Double.NaN) <= from) {
        mistakes.add(
            to.place(),
            wish.path(),
            "an upper edge at " + Plain.number(to.value()) + " m",
            "above the lower edge at " + Plain.number(from) + " m",
            "swap the two heights");
      }
    }
  }

  /** One bearing says nothing without the other. */
  static void bearings(String path, Given<Double> from, Given<Double> to, Mistakes mistakes) {
    if (from.written() != to.written()) {
      Given<Double> given = from.written() ? from : to;
      mistakes.add(
          given.place(),
          path,
          "one bearing only",
          "from_bearing_deg and to_bearing_deg, or neither",
          "give the other bearing too");
    }
  }
}
