package longbough.runner.scenario;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.scenario.written.WrittenOperation;
import longbough.runner.scenario.written.WrittenRegime;
import longbough.runner.scenario.written.WrittenVisit;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.Place;
import longbough.runner.yaml.Plain;

/** What must hold within and between regimes: names once, cuts that sum to one, sensible doses. */
final class RegimeChecks {

  private static final double TOLERANCE = 1e-6;

  private final Mistakes mistakes;
  private final TimingChecks timing;

  private RegimeChecks(long years, Mistakes mistakes) {
    this.mistakes = mistakes;
    timing = new TimingChecks(years, mistakes);
  }

  static void check(Scenario scenario, Mistakes mistakes) {
    long years = scenario.years().or((long) Presets.fallback("scenario.years"));
    RegimeChecks checks = new RegimeChecks(years, mistakes);
    checks.names(scenario);
    for (WrittenRegime regime : scenario.regimes()) {
      regime.visits().forEach(checks::visit);
    }
  }

  /** Letter case aside, since names become names of files. */
  private void names(Scenario scenario) {
    Map<String, Integer> lines = new HashMap<>();
    for (WrittenRegime regime : scenario.regimes()) {
      Given<String> name = regime.name();
      if (!name.present()) {
        continue;
      }
      Integer earlier =
          lines.putIfAbsent(name.value().toLowerCase(Locale.ROOT), name.place().line());
      if (earlier != null) {
        mistakes.add(
            name.place(),
            name.field(),
            Mistakes.quoted(name.value()) + " again (first on line " + earlier + ")",
            "each name once",
            "give this regime another name");
      }
    }
  }

  private void visit(WrittenVisit visit) {
    timing.check(visit);
    if (visit.cuts().shares() && Math.abs(visit.cuts().sum() - 1) > TOLERANCE) {
      mistakes.add(
          visit.cuts().place(),
          visit.cuts().path(),
          "shares that sum to " + Plain.number(visit.cuts().sum()),
          "collar, flush and stub that sum to 1",
          "a share that is not given counts as 0");
    }
    visit.operations().forEach(this::operation);
  }

  private void operation(WrittenOperation operation) {
    switch (operation.word()) {
      case "raise" -> oneOf(operation, "to_height_m", "to_live_crown_ratio");
      case "top" -> oneOf(operation, "at_height_m", "at_height_share");
      case "reduce" -> someOf(operation);
      case "open_window" -> window(operation);
      case "cut_back" -> {
        oneOf(operation, "to_reach_m", "share");
        window(operation);
        WishChecks.bearings(
            operation.path(),
            operation.number("from_bearing_deg"),
            operation.number("to_bearing_deg"),
            mistakes);
      }
      default -> {}
    }
  }

  private void oneOf(WrittenOperation operation, String one, String other) {
    if (operation.number(one).written() == operation.number(other).written()) {
      wrong(
          operation.place(),
          operation,
          operation.number(one).written() ? "both" : "neither",
          "either " + one + " or " + other,
          "give one of the two");
    }
  }

  private void someOf(WrittenOperation operation) {
    if (operation.number("height_share").or(0.0) + operation.number("spread_share").or(0.0) == 0) {
      wrong(
          operation.place(),
          operation,
          "no share",
          "height_share, spread_share or both",
          "give one above 0");
    }
  }

  private void window(WrittenOperation operation) {
    Given<Double> to = operation.number("to_height_m");
    double from = operation.number("from_height_m").or(Double.NaN);
    if (to.or(Double.NaN) <= from) {
      wrong(
          to.place(),
          operation,
          "an upper edge at " + Plain.number(to.value()) + " m",
          "above the lower edge at " + Plain.number(from) + " m",
          "swap the two heights");
    }
  }

  private void wrong(Place place, WrittenOperation at, String found, String allowed, String mend) {
    mistakes.add(place, at.path(), found, allowed, mend);
  }
}
