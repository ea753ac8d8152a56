package longbough.runner.update;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import longbough.model.Detail;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.random.RandomStream;
import longbough.runner.compare.Band;
import longbough.runner.compare.Cost;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.scenario.ShippedScenarios;

/**
 * Trees whose future is known: a future of another seed is taken for the truth, measured with the
 * stated errors, and the forecast after the visits is asked whether it holds what became of it.
 * {@code main} plays many; run it with the test classes on the class path.
 */
final class Coverage {
  private static final int[] SEEN = {3, 6};

  /** Figures whose bands are asked. */
  private static final List<ForecastFigure> ASKED =
      List.of(
          ForecastFigure.TRUNK_DIAMETER_CM,
          ForecastFigure.HEIGHT_M,
          ForecastFigure.LEAF_AREA_M2,
          ForecastFigure.RESERVE_FRACTION,
          ForecastFigure.DECAY_AREA_FRACTION,
          ForecastFigure.STRENGTH_LOSS_FRACTION,
          ForecastFigure.FAILURE_PROBABILITY,
          ForecastFigure.COST);

  /** What was counted for one figure. */
  static final class Count {
    int asked;
    int held;
    int heldBefore;
    double width;
    double widthBefore;

    double share() {
      return (double) held / asked;
    }

    double narrowed() {
      return width / widthBefore;
    }
  }

  final Map<ForecastFigure, Count> counts = new EnumMap<>(ForecastFigure.class);
  final Map<Standing, Integer> standings = new EnumMap<>(Standing.class);
  int trees;
  double effective;

  private final SimulationInput input;
  private final int regime;
  private final Effort effort;
  private final boolean modelErrs;
  private final List<Integer> later;

  /**
   * A trial.
   *
   * @param regime place of the regime that is followed
   * @param modelErrs whether the truth differs from the model by its stated discrepancy, too
   * @param later years whose figures are asked
   */
  Coverage(
      SimulationInput input, int regime, Effort effort, boolean modelErrs, List<Integer> later) {
    this.input = input;
    this.regime = regime;
    this.effort = effort;
    this.modelErrs = modelErrs;
    this.later = later;
    ASKED.forEach(figure -> counts.put(figure, new Count()));
  }

  /** Plays trees until so many that live at the last visit have been asked. */
  void play(int wanted, long truthSeed, int firstTruth) throws InterruptedException {
    int member = firstTruth;
    int done = 0;
    while (done < wanted) {
      done += tree(truthSeed, member++) ? 1 : 0;
    }
  }

  private boolean tree(long truthSeed, int member) throws InterruptedException {
    SimulationInput other =
        input.playing(input.regimes(), input.years(), input.members(), truthSeed);
    Detail detail = new Detail(false, Set.of(3, 4, 5, 6));
    History truth = new Simulation(other).run(input.regimes().get(regime), member, detail);
    if (truth.deathYear() <= SEEN[SEEN.length - 1]) {
      return false;
    }
    Updated updated =
        UpdateRun.play(input, visit(truth, truthSeed, member), regime, effort, 2, years -> {});
    trees++;
    standings.merge(updated.standing(), 1, Integer::sum);
    effective += updated.effective();
    ask(updated, truth);
    return true;
  }

  private MeasuredVisit visit(History truth, long seed, int member) {
    List<Measured> figures = new ArrayList<>();
    for (int year : SEEN) {
      figures.add(Figures.usual(Quantity.TRUNK_DIAMETER, year, 0));
    }
    for (int year = 4; year <= 6; year++) {
      figures.add(Figures.usual(Quantity.RING_WIDTH, year, 0));
    }
    figures.add(Figures.usual(Quantity.HEIGHT, 6, 0));
    figures.add(Figures.usual(Quantity.SPROUT_LENGTH, 3, 0));
    figures.add(Figures.usual(Quantity.DIEBACK, 6, 0));
    double[] values = new double[figures.size()];
    for (int i = 0; i < values.length; i++) {
      int year = figures.get(i).year();
      values[i] = figures.get(i).quantity().read(truth, truth.snapshots().get(year), year);
    }
    double[] start = TreeForeteller.start(input, figures);
    ErrorModel errors = new ErrorModel(figures, start, modelErrs ? 1 : 0);
    RandomStream random = new RandomStream();
    random.start(seed, member, -5, "measured");
    double[] read = new Law(errors, values, values.length).draw(random::normal);
    List<Measured> measured = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      Measured figure = figures.get(i);
      measured.add(Figures.usual(figure.quantity(), figure.year(), read[i]));
    }
    return Figures.visit(measured);
  }

  private void ask(Updated updated, History truth) {
    double rate = input.crew().discountRate();
    double[] cost = Cost.cumulative(truth, input.years(), rate);
    for (ForecastFigure figure : ASKED) {
      Band before = updated.before(figure, regime);
      Band after = updated.after(figure, regime);
      Count count = counts.get(figure);
      for (int year : later) {
        double value =
            figure == ForecastFigure.COST
                ? cost[year]
                : Futures.value(figure.column(), truth, year);
        if (!Double.isNaN(value)) {
          count.asked++;
          count.held += holds(after, year, value);
          count.heldBefore += holds(before, year, value);
          count.width += after.high()[year] - after.low()[year];
          count.widthBefore += before.high()[year] - before.low()[year];
        }
      }
    }
  }

  private static int holds(Band band, int year, double value) {
    return value >= band.low()[year] && value <= band.high()[year] ? 1 : 0;
  }

  String table() {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT, "%d trees, %s, effective %.0f%n", trees, standings, effective / trees));
    for (ForecastFigure figure : ASKED) {
      Count count = counts.get(figure);
      text.append(
          String.format(
              Locale.ROOT,
              "%-26s asked %4d  held %5.1f %%  before %5.1f %%  width %5.1f %%%n",
              figure.word(),
              count.asked,
              100 * count.share(),
              100.0 * count.heldBefore / count.asked,
              100 * count.narrowed()));
    }
    return text.toString();
  }

  /** Arguments: scenario, place of the regime, trees, whether the model errs, first truth. */
  public static void main(String[] args) throws InterruptedException {
    SimulationInput input =
        ScenarioResolver.resolve(
            ScenarioReader.read(ShippedScenarios.folder().resolve(args[0] + ".yaml")));
    int regime = Integer.parseInt(args[1]);
    SimulationInput alone = input.playing(List.of(input.regimes().get(regime)), 30, 400, 1);
    Coverage coverage =
        new Coverage(
            alone, 0, Effort.USUAL, Boolean.parseBoolean(args[3]), List.of(7, 10, 15, 20, 30));
    coverage.play(Integer.parseInt(args[2]), 1_000, Integer.parseInt(args[4]));
    System.out.println(String.join(" ", args));
    System.out.print(coverage.table());
  }
}
