package longbough.runner.scenario;

import java.util.List;
import java.util.stream.Stream;
import longbough.runner.scenario.written.WrittenTrigger;
import longbough.runner.scenario.written.WrittenVisit;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.KeyRow;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.Place;
import longbough.runner.yaml.Plain;

/** When visits happen: one kind of timing each, within the years that are played. */
final class TimingChecks {

  private final long years;
  private final Mistakes mistakes;

  TimingChecks(long years, Mistakes mistakes) {
    this.years = years;
    this.mistakes = mistakes;
  }

  void check(WrittenVisit visit) {
    long kinds =
        Stream.of(visit.year().written(), visit.everyYears().written(), visit.when().isPresent())
            .filter(kind -> kind)
            .count();
    if (kinds != 1) {
      wrong(
          visit.place(),
          visit.path(),
          kinds == 0 ? "no time" : "more than one kind of time",
          "one of year, every_years or when",
          "write 'year: 1', 'every_years: 3' or 'when: {...}'");
    }
    within(visit.year());
    within(visit.fromYear());
    within(visit.untilYear());
    if (visit.untilYear().or(Long.MAX_VALUE) < visit.fromYear().or(0L)) {
      wrong(
          visit.untilYear().place(),
          visit.untilYear().field(),
          "year " + visit.untilYear().value(),
          "from_year (" + visit.fromYear().value() + ") or later",
          "swap the two years");
    }
    misplaced(visit);
    visit.when().ifPresent(this::trigger);
  }

  private void within(Given<Long> year) {
    if (year.or(0L) > years) {
      wrong(
          year.place(),
          year.field(),
          "year " + year.value() + ", after the last of " + years,
          "1 to " + years,
          "years count from the start of the run; raise 'years' to play longer");
    }
  }

  private void misplaced(WrittenVisit visit) {
    if (visit.year().present()) {
      List.of(visit.fromYear(), visit.untilYear(), visit.gapYears())
          .forEach(key -> alone(key, "every_years or when"));
    } else if (visit.everyYears().present()) {
      alone(visit.gapYears(), "when");
    }
  }

  private void alone(Given<Long> key, String partner) {
    if (key.present()) {
      wrong(
          key.place(),
          key.field(),
          String.valueOf(key.value()),
          "only together with " + partner,
          "remove it");
    }
  }

  private void trigger(WrittenTrigger when) {
    if (when.above().written() == when.below().written()) {
      wrong(
          when.place(),
          when.path(),
          when.above().written() ? "both above and below" : "no threshold",
          "either above or below",
          "write for example 'above: 0.1'");
      return;
    }
    Given<Double> threshold = when.above().present() ? when.above() : when.below();
    if (when.measure().present() && threshold.present()) {
      KeyRow row = ScenarioReader.keys().row("measure", when.measure().value());
      if (!row.range().contains(threshold.value())) {
        wrong(
            threshold.place(),
            threshold.field(),
            Plain.number(threshold.value()),
            Plain.number(row.range().low()) + " to " + Plain.number(row.range().high()),
            row.key() + ": " + row.meaning());
      }
    }
  }

  private void wrong(Place place, String field, String found, String allowed, String mend) {
    mistakes.add(place, field, found, allowed, mend);
  }
}
