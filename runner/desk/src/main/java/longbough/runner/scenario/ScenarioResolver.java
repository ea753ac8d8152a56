package longbough.runner.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import longbough.model.SimulationInput;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Regime;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.scenario.written.WrittenCrew;
import longbough.runner.wish.Wishes;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * Turns a scenario as written into the input of a run: units become SI, words become numbers, and
 * everything left out gets its default. Each default is told in a sentence of {@code filledIn}.
 */
public final class ScenarioResolver {

  private static final String ORDINARY = "ordinary";

  private ScenarioResolver() {}

  /** The input for a scenario that {@link ScenarioReader} has read. */
  public static SimulationInput resolve(Scenario scenario) {
    Notes notes = new Notes();
    SpeciesTraits species =
        SpeciesLibrary.load().find(scenario.tree().species().value()).orElseThrow();
    int years = (int) notes.whole(scenario.years(), "Length of the run", "scenario.years", "years");
    int members =
        (int) notes.whole(scenario.members(), "Number of futures", "scenario.members", "");
    scenario.wishes().ifPresent(wishes -> WishResolver.resolve(wishes, notes));
    long seed = notes.whole(scenario.seed(), "Seed", "scenario.seed", "");
    return new SimulationInput(
        scenario.title().or(fileTitle(scenario.file())),
        species,
        ParameterLibrary.general().with(species.numbers()),
        TreeResolver.resolve(scenario.tree(), species, notes),
        PlaceResolver.site(scenario.site(), notes),
        PlaceResolver.climate(scenario.climate(), notes),
        regimes(scenario, notes),
        years,
        members,
        seed,
        crew(scenario.crew(), notes),
        notes.sentences());
  }

  /** What the client wants, where the scenario says so. */
  public static Optional<Wishes> wishes(Scenario scenario) {
    return scenario.wishes().map(wishes -> WishResolver.resolve(wishes, new Notes()));
  }

  private static List<Regime> regimes(Scenario scenario, Notes notes) {
    String skill = scenario.crew().skill().or(ORDINARY);
    CutMix cuts = Presets.cuts(skill);
    boolean prunes = scenario.regimes().stream().anyMatch(regime -> !regime.visits().isEmpty());
    if (prunes) {
      String mix = " (" + VisitResolver.describe(cuts) + ")";
      notes.add(
          scenario.crew().skill().present()
              ? "Crew skill '" + skill + "' taken for cuts that no visit describes" + mix + "."
              : "Crew skill not given: '" + skill + "' taken" + mix + ".");
    }
    VisitResolver visits = new VisitResolver(cuts, notes);
    return scenario.regimes().stream()
        .map(
            regime ->
                new Regime(
                    regime.name().value(),
                    regime.description().or(""),
                    regime.visits().stream().map(visits::resolve).toList()))
        .toList();
  }

  private static SimulationInput.Crew crew(WrittenCrew crew, Notes notes) {
    double price =
        notes.number(crew.pricePerHour(), "Price of a crew hour", "crew.price_per_hour", "");
    if (!crew.currency().present()) {
      notes.add("Currency not given: EUR taken.");
    }
    return new SimulationInput.Crew(
        price,
        crew.currency().or("EUR"),
        notes.number(crew.discountRate(), "Discount rate", "crew.discount_rate", "a year"));
  }

  private static String fileTitle(String file) {
    String name = String.valueOf(Path.of(file).getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
