package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import longbough.runner.validate.ValidationRow;

/**
 * Everything that was set beside open measurements, and what had to be left out.
 *
 * @param species trials by species; none without the file of trees
 * @param spreads spreads of single quantities
 * @param leftOut what was left out and why, a sentence each
 */
public record FieldReport(
    List<SpeciesTrial> species, List<SpreadTrial> spreads, List<String> leftOut) {

  /** Nothing was compared, for one reason. */
  public static FieldReport none(String why) {
    return new FieldReport(List.of(), List.of(), List.of(why));
  }

  public boolean empty() {
    return species.isEmpty() && spreads.isEmpty();
  }

  /** How many species {@link #of} will play. */
  public static int plays(Optional<OpenData> data) {
    return data.filter(d -> d.has(OpenData.STREET_TREES))
        .map(d -> StreetTrees.bySpecies(d).size())
        .orElse(0);
  }

  /**
   * Compares with all files that are there.
   *
   * @param rows the published checks as played, whose values are set beside the spreads
   */
  public static FieldReport of(
      Optional<OpenData> data, List<ValidationRow> rows, java.util.function.IntConsumer progress) {
    if (data.isEmpty()) {
      return none(
          "The comparison with open measurements is left out: no folder with "
              + OpenData.STREET_TREES
              + " was found beside the checkout (shared/data) and none was named with --data.");
    }
    OpenData folder = data.get();
    ModelReadings model = ModelReadings.of(rows);
    List<SpeciesTrial> species = new ArrayList<>();
    List<SpreadTrial> spreads = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    Wanted wanted = new Wanted(folder, leftOut);
    wanted.ask(
        OpenData.STREET_TREES,
        "sizes by species",
        () -> FieldTrials.run(StreetTrees.bySpecies(folder), progress),
        species::addAll);
    wanted.ask(SapwoodSpread.FILE, "sapwood", () -> SapwoodSpread.of(folder, model), spreads::add);
    wanted.ask(
        BiomassSpreads.FILE,
        "leaf mass and roots",
        () -> BiomassSpreads.of(folder, model),
        spreads::addAll);
    wanted.ask(ReserveSpread.FILE, "reserves", () -> ReserveSpread.of(folder, model), spreads::add);
    spreads.removeIf(trial -> trial.groups().isEmpty());
    return new FieldReport(species, spreads, leftOut);
  }

  private record Wanted(OpenData data, List<String> leftOut) {
    <T> void ask(String file, String what, Supplier<T> compare, Consumer<T> then) {
      if (data.has(file)) {
        then.accept(compare.get());
      } else {
        leftOut.add("No " + what + ": the folder of open measurements has no " + file + ".");
      }
    }
  }
}
