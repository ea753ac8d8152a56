package longbough.runner.limit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.history.VisitRow;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.runner.compare.Player;
import longbough.runner.compare.Quantiles;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;

/**
 * Finds how far each way can be taken: one visit in the first year, collar cuts, nothing
 * afterwards. A few settings show the whole answer; between the two that enclose the stated share
 * of futures the setting is found by halving. Every setting meets the same futures, so that a share
 * of them moves by the doses alone and not by chance.
 */
public final class LimitTrial {
  private static final CutMix COLLAR = new CutMix(1, 0, 0);
  private static final double[] SETTINGS = {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};
  private static final double SETTING_ACCURACY = 0.01;
  private static final int MOST_HALVINGS = 50;

  private final SimulationInput input;
  private final List<Threshold> thresholds;
  private final double share;
  private final Player player;
  private final int threads;
  private final History[] alone;

  private LimitTrial(SimulationInput input, double share, Player player, int threads)
      throws InterruptedException {
    this.input = input;
    this.share = share;
    this.player = player;
    this.threads = threads;
    thresholds = Threshold.all();
    alone = played(new Regime("left alone", "", List.of()));
  }

  /**
   * The table of one tree.
   *
   * @param input whose tree, place, years, futures and seed are taken; its regimes are not
   * @param share of the futures in which a line may be passed, above 0 to 1
   * @param progress told how many pairs of way and season are done
   */
  public static LimitTable play(
      SimulationInput input,
      double share,
      List<Way> ways,
      List<Season> seasons,
      Player player,
      int threads,
      IntConsumer progress)
      throws InterruptedException {
    LimitTrial trial = new LimitTrial(input, share, player, threads);
    Resampling resampling = new Resampling(input.members(), input.seed());
    List<Response> responses = new ArrayList<>();
    List<Limit> limits = new ArrayList<>();
    for (Way way : ways) {
      for (Season season : seasons) {
        Response response = trial.response(way, season);
        responses.add(response);
        limits.addAll(trial.limits(response, resampling));
        progress.accept(responses.size());
      }
    }
    return new LimitTable(input, share, trial.thresholds, responses, limits, TradeLimit.of(input));
  }

  private Response response(Way way, Season season) throws InterruptedException {
    TreeMap<Double, Step> steps = new TreeMap<>();
    steps.put(0.0, step(season, 0, alone));
    for (double setting : SETTINGS) {
      steps.put(setting, played(way, season, setting));
    }
    for (int index = 0; index < thresholds.size(); index++) {
      refine(way, season, index, steps);
    }
    return of(way, season, steps);
  }

  private Response of(Way way, Season season, TreeMap<Double, Step> steps) {
    return new Response(way, season, input.members(), List.copyOf(steps.values()));
  }

  /** Halves the first pair of settings that encloses the share; plays no setting twice. */
  private void refine(Way way, Season season, int index, TreeMap<Double, Step> steps)
      throws InterruptedException {
    Response coarse = of(way, season, steps);
    int first = 0;
    while (first < coarse.steps().size() && over(coarse, index, first) < 0) {
      first++;
    }
    if (first == 0 || first == coarse.steps().size()) {
      return;
    }
    double low = coarse.steps().get(first - 1).setting();
    double high = coarse.steps().get(first).setting();
    if (high - low <= SETTING_ACCURACY) {
      return;
    }
    try {
      new BisectionSolver(SETTING_ACCURACY)
          .solve(
              MOST_HALVINGS,
              setting -> over(coarse, index, at(way, season, setting, steps)),
              low,
              high);
    } catch (Interruption ended) {
      throw ended.cause;
    }
  }

  private double over(Response response, int index, int step) {
    return response.counted(thresholds.get(index), index, step) - share;
  }

  private double over(Response response, int index, Step step) {
    return response.counted(thresholds.get(index), index, step) - share;
  }

  private Step at(Way way, Season season, double setting, TreeMap<Double, Step> steps) {
    try {
      Step step = steps.get(setting);
      if (step == null) {
        step = played(way, season, setting);
        steps.put(setting, step);
      }
      return step;
    } catch (InterruptedException cause) {
      throw new Interruption(cause);
    }
  }

  private List<Limit> limits(Response response, Resampling resampling) {
    List<Limit> limits = new ArrayList<>();
    for (int index = 0; index < thresholds.size(); index++) {
      Threshold threshold = thresholds.get(index);
      double dose = response.doseAt(threshold, index, share);
      double[] ends = resampling.interval(response, threshold, index, share);
      String setting =
          Double.isFinite(dose) && dose > 0
              ? response.way().settingText(response.settingOf(dose), input.tree())
              : "";
      limits.add(
          new Limit(
              response.way(),
              response.season(),
              threshold,
              dose,
              ends[0],
              ends[1],
              response.mostDose(),
              setting,
              response.steps().get(0).share(index, input.members()),
              turnsAt(response, index, dose)));
    }
    return limits;
  }

  /** The first larger dose at which what counts has fallen below the share again. */
  private double turnsAt(Response response, int index, double dose) {
    for (int step = 0; step < response.steps().size(); step++) {
      if (response.steps().get(step).dose() > dose && over(response, index, step) < 0) {
        return response.steps().get(step).dose();
      }
    }
    return Double.NaN;
  }

  private Step played(Way way, Season season, double setting) throws InterruptedException {
    Operation operation = way.at(setting, input.tree());
    Visit visit = new Visit(new Timing.Once(1), season, List.of(operation), COLLAR);
    return step(season, setting, played(new Regime(way.label(), "", List.of(visit))));
  }

  private Step step(Season season, double setting, History[] pruned) {
    List<BitSet> passed = new ArrayList<>();
    for (Threshold threshold : thresholds) {
      BitSet futures = new BitSet(pruned.length);
      for (int member = 0; member < pruned.length; member++) {
        futures.set(member, threshold.passed(pruned[member], alone[member], season, input.years()));
      }
      passed.add(futures);
    }
    return new Step(setting, dose(pruned), passed);
  }

  private static double dose(History[] pruned) {
    double[] doses =
        Arrays.stream(pruned)
            .flatMap(history -> history.visits().stream())
            .mapToDouble(VisitRow::foliageRemovedFraction)
            .toArray();
    return doses.length == 0 ? 0 : Quantiles.of(Quantiles.sorted(doses), Quantiles.MIDDLE);
  }

  private History[] played(Regime regime) throws InterruptedException {
    SimulationInput one =
        input.playing(List.of(regime), input.years(), input.members(), input.seed());
    return player.playAll(one, threads, done -> {}).get(0);
  }

  /** Carries an interrupt through the solver. */
  private static final class Interruption extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient InterruptedException cause;

    Interruption(InterruptedException cause) {
      this.cause = cause;
    }
  }
}
