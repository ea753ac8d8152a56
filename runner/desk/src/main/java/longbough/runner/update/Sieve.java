package longbough.runner.update;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import longbough.model.random.RandomStream;

/**
 * Weighs futures by a visit, year by year, and where few are left with all the weight, takes more
 * of those and lets them differ again (sequential Monte Carlo with moves).
 *
 * <pre>
 * weigh     w_i *= p(y_k | y_1 .. y_(k-1), i)
 * resample  where ESS &lt; n / 2: systematic, all weights 1 / n again
 * stir      redraw each parameter, and each year so far, with chance q from where all come from;
 *           keep the new future with chance min(1, L' / L)
 * go on     the years to come are drawn anew for each
 * </pre>
 *
 * y_k the figures of the k-th measured year, L the likelihood of all figures so far. Redrawing a
 * random part from the futures' own law leaves that law as it is, so the rule of Metropolis and
 * Hastings needs the likelihoods only, and the stirred futures have the same law as the weighed
 * ones: no parameter is jittered and no kernel is chosen. Years to come don't depend on what was
 * measured once the present is given, so drawing them anew is exact. Sources: importance weights,
 * resampling and moves as in sequential Monte Carlo (Gordon, Salmond, Smith 1993; Gilks, Berzuini
 * 2001; both from memory).
 */
final class Sieve {
  /** Key of the random streams used here; the model's years are 0 or more, parameters have -1. */
  private static final int CHANCE = -2;

  private final Foreteller teller;
  private final MeasuredVisit visit;
  private final ErrorModel errors;
  private final long seed;
  private int nextMember;
  private List<Lineage> lineages;
  private List<Foretold> told;
  private double[] logLikelihood;
  private double[] logWeights;
  private int[] ancestors;
  private final List<Step> steps = new ArrayList<>();

  /**
   * One measured year.
   *
   * @param year simulation year
   * @param effective effective number of futures after weighing
   * @param resampled whether they were resampled
   * @param accepted share of the stirred futures that were kept
   */
  record Step(int year, double effective, boolean resampled, double accepted) {}

  /**
   * Futures after the last measured year.
   *
   * @param lineages the futures
   * @param weights sum to 1; empty where no future is possible
   * @param ancestors for each the one of the tried futures that it came from
   * @param steps what was done
   */
  record Sifted(List<Lineage> lineages, double[] weights, int[] ancestors, List<Step> steps) {
    boolean possible() {
      return weights.length > 0;
    }

    /** The fewest futures the weight ever lay on. */
    double leastEffective() {
      return steps.stream().mapToDouble(Step::effective).min().orElse(lineages.size());
    }

    /** Share of the stirred futures that were kept; NaN where none was stirred. */
    double kept() {
      return steps.stream()
          .filter(Step::resampled)
          .mapToDouble(Step::accepted)
          .average()
          .orElse(Double.NaN);
    }
  }

  /**
   * A sieve.
   *
   * @param firstFree numbers from here on are no future's yet
   */
  Sieve(Foreteller teller, MeasuredVisit visit, ErrorModel errors, long seed, int firstFree) {
    this.teller = teller;
    this.visit = visit;
    this.errors = errors;
    this.seed = seed;
    this.nextMember = firstFree;
  }

  /**
   * Log-likelihood of a future: that of the figures up to a year, minus infinity where the tree
   * lives or dies otherwise or has not what was measured.
   */
  static double logLikelihood(
      Foretold foretold, MeasuredVisit visit, ErrorModel errors, int untilYear) {
    if (!visit.fits(foretold.deathYear(), untilYear)) {
      return Double.NEGATIVE_INFINITY;
    }
    int count = visit.until(untilYear);
    double[] readings = new double[count];
    for (int i = 0; i < count; i++) {
      if (Double.isNaN(foretold.values()[i])) {
        return Double.NEGATIVE_INFINITY;
      }
      readings[i] = visit.figures().get(i).value();
    }
    return new Law(errors, foretold.values(), count).logDensity(readings);
  }

  /**
   * Weighs futures.
   *
   * @param plain the futures, as likely one as the other
   * @param plainTold what each showed up to the last measured year
   */
  Sifted sift(List<Lineage> plain, List<Foretold> plainTold) throws InterruptedException {
    int n = plain.size();
    lineages = new ArrayList<>(plain);
    told = new ArrayList<>(plainTold);
    logLikelihood = new double[n];
    logWeights = new double[n];
    ancestors = new int[n];
    Arrays.setAll(ancestors, i -> i);
    boolean renewed = false;
    for (int year : visit.years()) {
      if (renewed) {
        told = new ArrayList<>(teller.foretell(lineages, year));
      }
      weigh(year);
      double[] weights = Weights.normalised(logWeights);
      if (weights.length == 0) {
        steps.add(new Step(year, 0, false, 0));
        return new Sifted(List.copyOf(lineages), weights, ancestors, List.copyOf(steps));
      }
      double effective = Weights.effective(weights);
      boolean uneven = effective < Effort.UNEVEN * n;
      double accepted = 0;
      if (uneven) {
        resample(weights, year);
        accepted = stir(year);
        goOn(year);
        renewed = true;
      }
      steps.add(new Step(year, effective, uneven, accepted));
    }
    return new Sifted(
        List.copyOf(lineages), Weights.normalised(logWeights), ancestors, List.copyOf(steps));
  }

  private void weigh(int year) {
    for (int i = 0; i < lineages.size(); i++) {
      double before = logLikelihood[i];
      logLikelihood[i] = logLikelihood(told.get(i), visit, errors, year);
      logWeights[i] =
          before == Double.NEGATIVE_INFINITY || logWeights[i] == Double.NEGATIVE_INFINITY
              ? Double.NEGATIVE_INFINITY
              : logWeights[i] + logLikelihood[i] - before;
    }
  }

  private void resample(double[] weights, int year) {
    int n = weights.length;
    int[] taken = Weights.systematic(weights, n, stream(year, "resample").uniform());
    List<Lineage> lines = new ArrayList<>(n);
    List<Foretold> shown = new ArrayList<>(n);
    double[] likelihoods = new double[n];
    int[] from = new int[n];
    for (int i = 0; i < n; i++) {
      lines.add(lineages.get(taken[i]));
      shown.add(told.get(taken[i]));
      likelihoods[i] = logLikelihood[taken[i]];
      from[i] = ancestors[taken[i]];
    }
    lineages = lines;
    told = shown;
    logLikelihood = likelihoods;
    ancestors = from;
    Arrays.fill(logWeights, 0);
  }

  /** Stirs every future some times; returns the share that was kept. */
  private double stir(int year) throws InterruptedException {
    int n = lineages.size();
    long kept = 0;
    for (double chance : Effort.STIRRING) {
      List<Lineage> proposed = new ArrayList<>(n);
      double[] luck = new double[n];
      for (int i = 0; i < n; i++) {
        int member = nextMember++;
        RandomStream random = stream(member, "stir");
        luck[i] = StrictMath.log(random.uniform());
        proposed.add(lineages.get(i).stirred(random, chance, year, member));
      }
      List<Foretold> shown = teller.foretell(proposed, year);
      for (int i = 0; i < n; i++) {
        double likelihood = logLikelihood(shown.get(i), visit, errors, year);
        if (luck[i] < likelihood - logLikelihood[i]) {
          lineages.set(i, proposed.get(i));
          told.set(i, shown.get(i));
          logLikelihood[i] = likelihood;
          kept++;
        }
      }
    }
    return (double) kept / (n * Effort.STIRRING.length);
  }

  private void goOn(int year) {
    for (int i = 0; i < lineages.size(); i++) {
      lineages.set(i, lineages.get(i).turning(year + 1, nextMember++));
    }
  }

  /**
   * Equally weighted futures to be carried on to the end, each with years to come of its own.
   *
   * @param lastYear last measured year
   */
  Carried carried(Sifted sifted, int count, int lastYear) {
    int[] taken = Weights.systematic(sifted.weights(), count, stream(lastYear, "carry").uniform());
    List<Lineage> carried = new ArrayList<>(count);
    for (int index : taken) {
      carried.add(sifted.lineages().get(index).turning(lastYear + 1, nextMember++));
    }
    return new Carried(
        carried, Arrays.stream(taken).map(index -> sifted.ancestors()[index]).toArray());
  }

  /** Futures to be carried on, and for each the tried one that it came from. */
  record Carried(List<Lineage> lineages, int[] ancestors) {}

  private RandomStream stream(int member, String name) {
    RandomStream random = new RandomStream();
    random.start(seed, member, CHANCE, name);
    return random;
  }
}
