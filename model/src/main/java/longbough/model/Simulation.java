package longbough.model;

import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.History;
import longbough.model.parameter.FutureParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.process.YearContext;
import longbough.model.pruning.Regime;
import longbough.model.random.Fate;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;
import longbough.model.tree.TreeReconstruction;

/**
 * START HERE. Plays one tree forward under one regime in one future: sets the tree up, runs {@link
 * YearlyCycle} for each year it lives, and writes the history. One a thread; the same input, regime
 * and member give the same history bit for bit.
 */
public final class Simulation {
  private final SimulationInput input;
  private final TreeState start;
  private final double startLeafAreaM2;
  private final TreeState state = new TreeState();
  private final PruningCrew crew;
  private final YearlyCycle cycle;
  private Fate parametersOf;
  private ModelParameters parameters;

  public Simulation(SimulationInput input) {
    this.input = input;
    ModelParameters mean = ModelParameters.of(input.species(), input.parameters());
    this.start = TreeReconstruction.build(input.tree(), mean, input.site().openness());
    this.startLeafAreaM2 = FullLeaf.areaM2(start);
    this.crew = new PruningCrew(input.crew().pricePerHour());
    this.cycle = new YearlyCycle(input.climate(), input.site(), input.dryYears(), crew);
  }

  /** The tree as reconstructed from its measures, before any year; a copy. */
  public TreeState startingTree() {
    TreeState copy = new TreeState();
    copy.copyFrom(start);
    return copy;
  }

  /** Leaf area of the tree as measured, in full leaf, m2. */
  public double startLeafAreaM2() {
    return startLeafAreaM2;
  }

  /**
   * One history.
   *
   * @param regime how the tree is treated
   * @param member which future, 0 or more; the same number is the same weather and parameters
   * @param detail what is kept besides the yearly rows
   */
  public History run(Regime regime, int member, Detail detail) {
    return run(regime, Fate.of(member), detail);
  }

  /**
   * One history of a future that may be put together from several.
   *
   * @param regime how the tree is treated
   * @param fate where its chance comes from; an equal one gives the same history
   * @param detail what is kept besides the yearly rows
   */
  public History run(Regime regime, Fate fate, Detail detail) {
    History history = new History(input.years());
    EventLog events = new EventLog(detail.events());
    YearContext context = new YearContext(state, new CarbonLedger(), events, new RandomStream());
    context.parameters = parametersOf(fate);
    crew.begin(regime, history);
    double woodCarbon = context.parameters.carbon().woodCarbon();
    state.copyFrom(start);
    TreeReconstruction.startReserve(state, context.parameters);
    cycle.measure(context);
    Recorder.start(history, state, startLeafAreaM2, woodCarbon);
    snapshot(history, detail);
    ReserveWatch watch = new ReserveWatch();
    for (int year = 1; year <= input.years() && state.vitality.alive; year++) {
      state.year = year;
      cycle.run(context, input.seed(), fate.year(year));
      watch.look(context);
      Recorder.year(history, context, woodCarbon);
      snapshot(history, detail);
    }
    if (!state.vitality.alive) {
      history.death(state.vitality.deathYear, state.vitality.cause);
      Recorder.afterDeath(history, state.vitality.deathYear, input.years());
      lateSnapshots(history, detail);
    }
    history.wounds(Recorder.wounds(state));
    history.events(events.events());
    return history;
  }

  private ModelParameters parametersOf(Fate fate) {
    if (!fate.equals(parametersOf)) {
      parameters =
          ModelParameters.of(
              input.species(), FutureParameters.draw(input.parameters(), input.seed(), fate));
      parametersOf = fate;
    }
    return parameters;
  }

  private void snapshot(History history, Detail detail) {
    if (detail.snapshotYears().contains(state.year)) {
      TreeState copy = new TreeState();
      copy.copyFrom(state);
      history.snapshots().put(state.year, copy);
    }
  }

  /** A dead tree stands in every later picture as it died. */
  private void lateSnapshots(History history, Detail detail) {
    for (int year : detail.snapshotYears()) {
      if (year > state.year) {
        TreeState copy = new TreeState();
        copy.copyFrom(state);
        history.snapshots().put(year, copy);
      }
    }
  }
}
