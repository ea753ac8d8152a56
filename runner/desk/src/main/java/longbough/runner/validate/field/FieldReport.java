package longbough.runner.validate.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntConsumer;
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

  /**
   * Reads every file, so that a mistake in one is told before anything is played.
   *
   * @return how many species {@link #of} will play
   */
  public static int read(Optional<OpenData> data) {
    int[] count = new int[1];
    compared(
        data,
        List.of(),
        trees -> {
          count[0] = trees.size();
          return List.of();
        });
    return count[0];
  }

  /**
   * Compares with all files that are there.
   *
   * @param rows the published checks as played, whose values are set beside the spreads
   */
  public static FieldReport of(
      Optional<OpenData> data, List<ValidationRow> rows, IntConsumer progress) {
    return compared(data, rows, trees -> FieldTrials.run(trees, progress));
  }

  private static FieldReport compared(
      Optional<OpenData> data,
      List<ValidationRow> rows,
      Function<Map<String, List<StreetTree>>, List<SpeciesTrial>> grow) {
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
        () -> grow.apply(StreetTrees.bySpecies(folder)),
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
