package longbough.runner.validate.lab;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.SimulationInput.Crew;
import longbough.model.history.History;
import longbough.model.parameter.Climate;
import longbough.model.parameter.DryYears;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.Site;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.model.state.TreeState;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.TreeReconstruction;
import longbough.runner.scenario.ClimateLibrary;
import longbough.shared.quantity.Range;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;
import longbough.shared.trait.SpeciesLibrary;

/**
 * Plays an open-grown tree in good condition, of the mean size of its species at a trunk diameter,
 * over futures that are the same for every regime.
 */
public final class Lab {
  public static final CutMix COLLAR = new CutMix(1, 0, 0);
  public static final CutMix FLUSH = new CutMix(0, 1, 0);
  public static final CutMix STUB = new CutMix(0, 0, 1);

  public static final Climate MARITIME = ClimateLibrary.get("maritime_temperate");
  public static final Climate CONTINENTAL = ClimateLibrary.get("continental_temperate");
  public static final Climate MEDITERRANEAN = ClimateLibrary.get("mediterranean");
  public static final Climate SUBTROPICAL = ClimateLibrary.get("humid_subtropical");

  private static final Site OPEN = new Site(1, 200, 0.7, 1);

  /** Wind over that in open country, as scenarios have it for a courtyard. */
  private static final double SHELTERED = 0.4;

  private static final double GOOD = 0.85;
  static final long SEED = 20260101;

  private final String species;
  private final double dbhM;
  private final int years;
  private final int[] members;
  private final Conditions under;

  private Lab(String species, double dbhM, int years, int[] members, Conditions under) {
    this.species = species;
    this.dbhM = dbhM;
    this.years = years;
    this.members = members;
    this.under = under;
  }

  public static Lab of(String species, double dbhM, Climate climate, int years, int members) {
    return new Lab(
        species,
        dbhM,
        years,
        IntStream.range(0, members).toArray(),
        new Conditions(
            climate,
            GeneralNumbers.table().with(SpeciesLibrary.load().get(species).numbers()),
            OPEN,
            GOOD,
            DryYears.BY_CHANCE,
            StandForm.OPEN_GROWN));
  }

  private Lab under(Conditions other) {
    return new Lab(species, dbhM, years, members, other);
  }

  /** The same trees with one parameter set, if need be outside its plausible range. */
  public Lab with(String name, double value) {
    Sourced row = under.parameters().get(name);
    Range wide = new Range(Math.min(value, row.range().low()), Math.max(value, row.range().high()));
    Sourced set =
        new Sourced(
            name,
            value,
            row.unit(),
            wide,
            false,
            row.basis(),
            row.citation(),
            "set for an experiment");
    return under(under.with(under.parameters().with(ParameterTable.of(List.of(set)))));
  }

  public Lab in(Climate other) {
    return under(under.with(other));
  }

  /**
   * The same trees closed in at the sides: 1 open sky, 0 walled in. The neighbours break the wind
   * too: down to that of a place sheltered on all sides.
   */
  public Lab crowded(double openness) {
    double wind = SHELTERED + openness * (OPEN.windExposure() - SHELTERED);
    return under(under.with(new Site(openness, OPEN.soilWaterCapacityMm(), wind, 1)));
  }

  /** The same trees with the height and the crown that they have grown to in a stand. */
  public Lab shaped(StandForm other) {
    return under(under.with(other));
  }

  /** The same trees in chosen futures. */
  public Lab inFutures(int[] chosen) {
    return new Lab(species, dbhM, years, chosen, under);
  }

  /** The same trees with dry seasons in these years and no other; none where none is named. */
  public Lab dryIn(Integer... chosen) {
    return under(under.with(new DryYears(false, Set.of(chosen))));
  }

  int years() {
    return years;
  }

  /** The same trees in another condition, 0 dying to 1 excellent. */
  public Lab inCondition(double other) {
    return under(under.rated(other));
  }

  public ModelParameters meanParameters() {
    return ModelParameters.of(SpeciesLibrary.load().get(species), under.parameters());
  }

  public double dbhM() {
    return dbhM;
  }

  public String species() {
    return species;
  }

  /** The tree as reconstructed, before any year. */
  public TreeState start() {
    ModelParameters mean = meanParameters();
    return TreeReconstruction.build(tree(), mean, under.site().openness());
  }

  /** The climate and the site on which the trees stand. */
  public Climate climate() {
    return under.climate();
  }

  public Site site() {
    return under.site();
  }

  /** The tree left alone. */
  public Played alone(Integer... snapshots) {
    return play(List.of(), snapshots);
  }

  public Played play(Visit visit, Integer... snapshots) {
    return play(List.of(visit), snapshots);
  }

  /** All futures under some visits; the state is kept at the end of the years named. */
  public Played play(List<Visit> visits, Integer... snapshots) {
    Regime regime = new Regime("experiment", "", visits);
    SimulationInput input =
        new SimulationInput(
            "experiment",
            SpeciesLibrary.load().get(species),
            under.parameters(),
            tree(),
            under.site(),
            under.climate(),
            under.dryYears(),
            List.of(regime),
            years,
            members.length,
            SEED,
            new Crew(80, "EUR", 0.03),
            List.of());
    Simulation simulation = new Simulation(input);
    Detail detail = new Detail(true, Set.copyOf(new LinkedHashSet<>(List.of(snapshots))));
    List<History> histories = new ArrayList<>();
    for (int member : members) {
      histories.add(simulation.run(regime, member, detail));
    }
    return new Played(histories);
  }

  public static Visit once(int year, Operation... operations) {
    return once(year, Season.WINTER, COLLAR, operations);
  }

  public static Visit once(int year, Season season, CutMix cuts, Operation... operations) {
    return new Visit(new Timing.Once(year), season, List.of(operations), cuts);
  }

  public static Visit every(int first, int interval, int until, Operation... operations) {
    return new Visit(
        new Timing.Every(first, interval, until), Season.WINTER, List.of(operations), COLLAR);
  }

  /** The tree as one would measure it. */
  public MeasuredTree tree() {
    return under.form().tree(meanParameters().species(), dbhM, under.condition());
  }
}
