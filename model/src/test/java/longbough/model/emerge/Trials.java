package longbough.model.emerge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longbough.model.Detail;
import longbough.model.PlayedTrees;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.SimulationInput.Crew;
import longbough.model.history.History;
import longbough.model.parameter.Climate;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.Site;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.shared.source.ParameterTable;
import longbough.shared.trait.SpeciesLibrary;

/**
 * Plays an open-grown tree in good condition, of the mean size of its species at a trunk diameter,
 * over futures that are the same for every regime.
 */
final class Trials {
  static final CutMix COLLAR = new CutMix(1, 0, 0);
  static final CutMix FLUSH = new CutMix(0, 1, 0);
  static final CutMix STUB = new CutMix(0, 0, 1);

  private static final double GOOD = 0.8;
  private static final long SEED = 20260101;

  private final String species;
  private final double dbhM;
  private final Climate climate;
  private final int years;
  private final int members;
  private final ParameterTable parameters;
  private final Site site;

  private Trials(
      String species,
      double dbhM,
      Climate climate,
      int years,
      int members,
      ParameterTable parameters,
      Site site) {
    this.species = species;
    this.dbhM = dbhM;
    this.climate = climate;
    this.years = years;
    this.members = members;
    this.parameters = parameters;
    this.site = site;
  }

  static Trials of(String species, double dbhM, Climate climate, int years, int members) {
    return new Trials(
        species, dbhM, climate, years, members, PlayedTrees.table(species), PlayedTrees.OPEN);
  }

  /** The same trees with one parameter set, if need be outside its plausible range. */
  Trials with(String name, double value) {
    return new Trials(
        species, dbhM, climate, years, members, PlayedTrees.with(parameters, name, value), site);
  }

  Trials in(Climate other) {
    return new Trials(species, dbhM, other, years, members, parameters, site);
  }

  /** The same trees closed in all round by their neighbours. */
  Trials walledIn() {
    Site closed = new Site(0, site.soilWaterCapacityMm(), site.windExposure(), site.growthFactor());
    return new Trials(species, dbhM, climate, years, members, parameters, closed);
  }

  ModelParameters meanParameters() {
    return ModelParameters.of(SpeciesLibrary.load().get(species), parameters);
  }

  double dbhM() {
    return dbhM;
  }

  String species() {
    return species;
  }

  /** The tree left alone. */
  Outcome alone(Integer... snapshots) {
    return play(List.of(), snapshots);
  }

  Outcome play(Visit visit, Integer... snapshots) {
    return play(List.of(visit), snapshots);
  }

  /** All futures under some visits; the state is kept at the end of the years named. */
  Outcome play(List<Visit> visits, Integer... snapshots) {
    Regime regime = new Regime("test", "", visits);
    SimulationInput input =
        new SimulationInput(
            "test",
            SpeciesLibrary.load().get(species),
            parameters,
            PlayedTrees.tree(meanParameters().species(), dbhM, GOOD),
            site,
            climate,
            List.of(regime),
            years,
            members,
            SEED,
            new Crew(80, "EUR", 0.03),
            List.of());
    Simulation simulation = new Simulation(input);
    Detail detail = new Detail(true, Set.copyOf(new LinkedHashSet<>(List.of(snapshots))));
    List<History> histories = new ArrayList<>();
    for (int member = 0; member < members; member++) {
      histories.add(simulation.run(regime, member, detail));
    }
    return new Outcome(histories);
  }

  static Visit once(int year, Operation... operations) {
    return once(year, Season.WINTER, COLLAR, operations);
  }

  static Visit once(int year, Season season, CutMix cuts, Operation... operations) {
    return new Visit(new Timing.Once(year), season, List.of(operations), cuts);
  }

  static Visit every(int first, int interval, int until, Operation... operations) {
    return new Visit(
        new Timing.Every(first, interval, until), Season.WINTER, List.of(operations), COLLAR);
  }
}
