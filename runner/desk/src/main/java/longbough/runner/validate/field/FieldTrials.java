package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import longbough.shared.trait.SpeciesLibrary;

/** Every species of which enough trees were measured, tried against them. */
public final class FieldTrials {

  private FieldTrials() {}

  /** Trials in the order of the species' ids. */
  public static List<SpeciesTrial> run(
      Map<String, List<StreetTree>> measured, IntConsumer progress) {
    List<SpeciesTrial> trials = new ArrayList<>();
    measured.forEach(
        (id, trees) -> {
          trials.add(SpeciesTrial.of(SpeciesLibrary.load().get(id), trees));
          progress.accept(trials.size());
        });
    return trials;
  }
}
