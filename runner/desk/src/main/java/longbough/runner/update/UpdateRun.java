package longbough.runner.update;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.Regime;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;

/**
 * Weighs the futures of a scenario by a visit. The scenario's own futures are weighed as they are,
 * where enough of them agree with the visit; else more are tried and sifted ({@link Sieve}).
 */
public final class UpdateRun {
  /** Numbers of futures beyond any that a scenario may ask for. */
  private static final int FIRST_FREE = 1 << 24;

  private final SimulationInput input;
  private final MeasuredVisit visit;
  private final int followed;
  private final Effort effort;
  private final FatePlayer player;
  private final ErrorModel errors;
  private final Foreteller teller;
  private final Map<String, Integer> places = new LinkedHashMap<>();

  private UpdateRun(
      SimulationInput input, MeasuredVisit visit, int followed, Effort effort, FatePlayer player) {
    this.input = input;
    this.visit = visit;
    this.followed = followed;
    this.effort = effort;
    this.player = player;
    this.errors = new ErrorModel(visit.figures(), TreeForeteller.start(input, visit.figures()));
    this.teller = new TreeForeteller(input, input.regimes().get(followed), visit.figures(), player);
    for (Sourced row : input.parameters().rows()) {
      if (row.sampled()) {
        places.put(row.name(), places.size());
      }
    }
  }

  /**
   * The scenario where the other regimes begin after the visit, the one that was followed before
   * it: what a change of plan from now on would bring.
   *
   * @param followed place of the regime that was followed; negative for the first
   */
  public static SimulationInput turning(SimulationInput input, int followed, int year) {
    Regime before = input.regimes().get(Math.max(0, followed));
    List<Regime> regimes =
        input.regimes().stream()
            .map(regime -> regime == before ? regime : PlanTurn.of(before, regime, year))
            .toList();
    return input.playing(regimes, input.years(), input.members(), input.seed());
  }

  /**
   * Plays and weighs.
   *
   * @param input the scenario; its futures are the forecast before the visit
   * @param visit what was measured, within the years of the input
   * @param followed place of the regime that was followed; negative where nobody said, the first is
   *     then taken
   * @param threads how many futures are played side by side; changes no result
   * @param yearsPlayed told of years played since it was told last, from any thread
   */
  public static Updated play(
      SimulationInput input,
      MeasuredVisit visit,
      int followed,
      Effort effort,
      int threads,
      IntConsumer yearsPlayed)
      throws InterruptedException {
    FatePlayer player = new FatePlayer(threads, yearsPlayed);
    return new UpdateRun(input, visit, Math.max(0, followed), effort, player).run(followed < 0);
  }

  private Updated run(boolean byDefault) throws InterruptedException {
    ParameterTable limits = ErrorModel.parameters();
    List<Lineage> own = plain(0, input.members());
    Futures before = Futures.equal(player.playAll(input, own));
    List<Lineage> plain = new ArrayList<>(own);
    List<Foretold> told = new ArrayList<>(teller.foretell(own, visit.lastYear()));
    double[] weights = weights(told);
    boolean enough =
        Weights.effective(weights) >= Math.max(effort.enough(), Effort.UNEVEN * input.members());
    if (!enough) {
      more(plain, told, effort.tried());
      weights = weights(told);
    }
    Outlook outlook = Outlook.of(told, visit, errors, input.seed());
    Standing standing = standing(outlook, weights, limits);
    if (standing == Standing.OUTSIDE || standing == Standing.DEAD) {
      return updated(byDefault, standing, outlook, told, weights, null, before, before, null);
    }
    if (enough) {
      Futures after = new Futures(before.histories(), weights);
      return updated(byDefault, standing, outlook, told, weights, null, before, after, null);
    }
    Sieve sieve = sieve();
    Sieve.Sifted sifted = sieve.sift(plain, told);
    while (sifted.leastEffective() < effort.enough() && 2 * plain.size() <= effort.most()) {
      more(plain, told, 2 * plain.size());
      sieve = sieve();
      sifted = sieve.sift(plain, told);
    }
    weights = weights(told);
    Sieve.Carried carried = sieve.carried(sifted, effort.carried(), visit.lastYear());
    List<History[]> histories = player.playAll(input, carried.lineages());
    Futures after = Futures.equal(histories);
    return updated(byDefault, standing, outlook, told, weights, sifted, before, after, carried);
  }

  private Sieve sieve() {
    return new Sieve(teller, visit, errors, input.seed(), FIRST_FREE);
  }

  /** Tries further plain futures, until there are as many as wanted. */
  private void more(List<Lineage> plain, List<Foretold> told, int wanted)
      throws InterruptedException {
    if (wanted > plain.size()) {
      List<Lineage> further = plain(plain.size(), wanted);
      plain.addAll(further);
      told.addAll(teller.foretell(further, visit.lastYear()));
    }
  }

  private List<Lineage> plain(int from, int to) {
    List<Lineage> lineages = new ArrayList<>();
    for (int member = from; member < to; member++) {
      lineages.add(Lineage.plain(places, input.years(), member));
    }
    return lineages;
  }

  private double[] logLikelihoods(List<Foretold> told) {
    return told.stream()
        .mapToDouble(future -> Sieve.logLikelihood(future, visit, errors, visit.lastYear()))
        .toArray();
  }

  private double[] weights(List<Foretold> told) {
    return Weights.normalised(logLikelihoods(told));
  }

  private Standing standing(Outlook outlook, double[] weights, ParameterTable limits) {
    if (weights.length == 0 || outlook.surprise() <= limits.value("check.outside")) {
      return Standing.OUTSIDE;
    }
    if (visit.dead()) {
      return Standing.DEAD;
    }
    return outlook.surprise() <= limits.value("check.doubtful")
        ? Standing.DOUBTFUL
        : Standing.FORETOLD;
  }

  private Updated updated(
      boolean byDefault,
      Standing standing,
      Outlook outlook,
      List<Foretold> told,
      double[] weights,
      Sieve.Sifted sifted,
      Futures before,
      Futures after,
      Sieve.Carried carried) {
    int[] from = new int[told.size()];
    if (carried != null) {
      Arrays.stream(carried.ancestors()).forEach(ancestor -> from[ancestor]++);
    } else if (after != before) {
      Arrays.fill(from, 1);
    }
    double[] logs = logLikelihoods(told);
    List<Tried> tried = new ArrayList<>();
    for (int i = 0; i < logs.length; i++) {
      tried.add(new Tried(i, logs[i], weights.length == 0 ? 0 : weights[i], from[i]));
    }
    double effective = Weights.effective(weights);
    return new Updated(
        input,
        visit,
        followed,
        byDefault,
        standing,
        outlook,
        tried,
        effective,
        sifted == null ? effective : sifted.leastEffective(),
        sifted != null && sifted.steps().stream().anyMatch(Sieve.Step::resampled),
        sifted == null ? Double.NaN : sifted.kept(),
        before,
        after);
  }
}
