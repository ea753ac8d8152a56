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
  private final Climate climate;
  private final int years;
  private final int[] members;
  private final ParameterTable parameters;
  private final Site site;
  private final double condition;
  private final DryYears dryYears;
  private final StandForm form;

  private Lab(
      String species,
      double dbhM,
      Climate climate,
      int years,
      int[] members,
      ParameterTable parameters,
      Site site,
      double condition,
      DryYears dryYears,
      StandForm form) {
    this.species = species;
    this.dbhM = dbhM;
    this.climate = climate;
    this.years = years;
    this.members = members;
    this.parameters = parameters;
    this.site = site;
    this.condition = condition;
    this.dryYears = dryYears;
    this.form = form;
  }

  public static Lab of(String species, double dbhM, Climate climate, int years, int members) {
    return new Lab(
        species,
        dbhM,
        climate,
        years,
        IntStream.range(0, members).toArray(),
        GeneralNumbers.table().with(SpeciesLibrary.load().get(species).numbers()),
        OPEN,
        GOOD,
        DryYears.BY_CHANCE,
        StandForm.OPEN_GROWN);
  }

  /** The same trees with one parameter set, if need be outside its plausible range. */
  public Lab with(String name, double value) {
    Sourced row = parameters.get(name);
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
    ParameterTable changed = parameters.with(ParameterTable.of(List.of(set)));
    return new Lab(
        species, dbhM, climate, years, members, changed, site, condition, dryYears, form);
  }

  public Lab in(Climate other) {
    return new Lab(
        species, dbhM, other, years, members, parameters, site, condition, dryYears, form);
  }

  /**
   * The same trees closed in at the sides: 1 open sky, 0 walled in. The neighbours break the wind
   * too: down to that of a place sheltered on all sides.
   */
  public Lab crowded(double openness) {
    double wind = SHELTERED + openness * (OPEN.windExposure() - SHELTERED);
    Site other = new Site(openness, OPEN.soilWaterCapacityMm(), wind, 1);
    return new Lab(
        species, dbhM, climate, years, members, parameters, other, condition, dryYears, form);
  }

  /** The same trees with the height and the crown that they have grown to in a stand. */
  public Lab shaped(StandForm other) {
    return new Lab(
        species, dbhM, climate, years, members, parameters, site, condition, dryYears, other);
  }

  /** The same trees in chosen futures. */
  public Lab inFutures(int[] chosen) {
    return new Lab(
        species, dbhM, climate, years, chosen, parameters, site, condition, dryYears, form);
  }

  /** The same trees with dry seasons in these years and no other; none where none is named. */
  public Lab dryIn(Integer... chosen) {
    DryYears named = new DryYears(false, Set.of(chosen));
    return new Lab(
        species, dbhM, climate, years, members, parameters, site, condition, named, form);
  }

  int years() {
    return years;
  }

  /** The same trees in another condition, 0 dying to 1 excellent. */
  public Lab inCondition(double other) {
    return new Lab(species, dbhM, climate, years, members, parameters, site, other, dryYears, form);
  }

  public ModelParameters meanParameters() {
    return ModelParameters.of(SpeciesLibrary.load().get(species), parameters);
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
    return TreeReconstruction.build(tree(), mean, site.openness());
  }

  /** The climate and the site on which the trees stand. */
  public Climate climate() {
    return climate;
  }

  public Site site() {
    return site;
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
            parameters,
            tree(),
            site,
            climate,
            dryYears,
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
    return form.tree(meanParameters().species(), dbhM, condition);
  }
}
