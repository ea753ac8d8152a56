package longbough.runner.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Visit;
import longbough.runner.scenario.written.WrittenCuts;
import longbough.runner.scenario.written.WrittenTrigger;
import longbough.runner.scenario.written.WrittenVisit;
import longbough.runner.yaml.Plain;

/** Visits with their timing, season and cuts. */
final class VisitResolver {

  private final CutMix crewCuts;
  private final Notes notes;
  private final OperationResolver operations;

  VisitResolver(CutMix crewCuts, Notes notes) {
    this.crewCuts = crewCuts;
    this.notes = notes;
    operations = new OperationResolver(notes);
  }

  Visit resolve(WrittenVisit visit) {
    return new Visit(
        timing(visit),
        season(visit),
        visit.operations().stream().map(operations::resolve).toList(),
        cuts(visit.cuts()));
  }

  private Timing timing(WrittenVisit visit) {
    if (visit.year().present()) {
      return new Timing.Once(visit.year().value().intValue());
    }
    if (!visit.fromYear().present()) {
      notes.add("First year of repeated visits not given: year 1 taken where it is missing.");
    }
    int from = visit.fromYear().or(1L).intValue();
    // Where no end is written the visits go on to the end of the run, however long it is made.
    int until =
        visit.untilYear().present()
            ? visit.untilYear().value().intValue()
            : (int) ScenarioReader.keys().row("visit", "until_year").range().high();
    if (visit.everyYears().present()) {
      return new Timing.Every(from, visit.everyYears().value().intValue(), until);
    }
    WrittenTrigger when = visit.when().orElseThrow();
    int gap =
        (int)
            notes.whole(
                visit.gapYears(),
                "Wait after a visit that a measure called for",
                "visit.gap_years",
                "years");
    boolean above = when.above().present();
    double threshold = above ? when.above().value() : when.below().value();
    return new Timing.When(
        TriggerMeasure.valueOf(when.measure().value().toUpperCase(Locale.ROOT)),
        above,
        threshold,
        from,
        until,
        gap);
  }

  private Season season(WrittenVisit visit) {
    if (!visit.season().present()) {
      notes.add("Season not given: winter taken where it is missing.");
    }
    return Season.valueOf(visit.season().or("winter").toUpperCase(Locale.ROOT));
  }

  private CutMix cuts(WrittenCuts cuts) {
    if (cuts.shares()) {
      return new CutMix(cuts.collar().or(0.0), cuts.flush().or(0.0), cuts.stub().or(0.0));
    }
    if (!cuts.skill().present()) {
      return crewCuts;
    }
    CutMix mix = Presets.cuts(cuts.skill().value());
    notes.add("Cuts '" + cuts.skill().value() + "' taken as " + describe(mix) + ".");
    return mix;
  }

  /** A mix in words: the placements that occur. */
  static String describe(CutMix mix) {
    List<String> parts = new ArrayList<>();
    share(parts, mix.collar(), "collar");
    share(parts, mix.flush(), "flush");
    share(parts, mix.stub(), "stub");
    return String.join(", ", parts);
  }

  private static void share(List<String> parts, double share, String placement) {
    if (share > 0) {
      parts.add(Plain.percent(share) + " " + placement);
    }
  }
}
