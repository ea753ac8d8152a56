package longbough.runner.gentler.search;

import java.util.List;
import java.util.Locale;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.model.pruning.Regime;
import longbough.runner.gentler.Futures;
import longbough.runner.gentler.Outcome;
import org.apache.commons.math3.random.Well19937c;

/**
 * Run by hand: the search against the best of 2,000 plans drawn by chance, over the same futures,
 * in ten invented cases, or in some of them. Arguments: futures, first case, case after the last.
 */
public final class SearchAgainstChance {
  private static final int RANDOM = 2000;
  private static final double SAME = 1e-9;

  private SearchAgainstChance() {}

  public static void main(String[] args) throws InterruptedException {
    int futures = args.length > 0 ? Integer.parseInt(args[0]) : 8;
    int from = args.length > 2 ? Integer.parseInt(args[1]) : 0;
    int to = args.length > 2 ? Integer.parseInt(args[2]) : InventedCase.all().size();
    int won = 0;
    for (InventedCase one : InventedCase.all().subList(from, to)) {
      SimulationInput input = one.input(futures);
      try (Futures all = new Futures(input, one.wishes(), 2)) {
        Design design =
            new Design(one.wishes(), all.yardsticks(), new Simulation(input).startingTree());
        Trials trials = new Trials(all, design);
        long began = System.nanoTime();
        long worked = worked();
        PlanSearch.run(trials, design, input.seed(), done -> {});
        double seconds = (System.nanoTime() - began) / 1e9;
        double work = (worked() - worked) / 1e9;
        int played = trials.all().size();
        Outcome found = best(trials);
        Outcome alone = all.play(new Regime("", "", List.of()));
        Trials chance = new Trials(all, design);
        Well19937c random = new Well19937c(77);
        for (int i = 0; i < RANDOM; i++) {
          chance.of(
              java.util.stream.DoubleStream.generate(random::nextDouble)
                  .limit(design.numbers())
                  .toArray());
        }
        Outcome drawn = best(chance);
        boolean wins = Weighting.USUAL.of(found) <= Weighting.USUAL.of(drawn) + SAME;
        won += wins ? 1 : 0;
        System.out.printf(
            Locale.ROOT,
            "%-24s %5.1f s, %5.1f s of one processor, %4d plans played; search %.4f (fulfilled %.3f met %.2f harm %.3f h %.1f),"
                + " chance %.4f (fulfilled %.3f met %.2f harm %.3f h %.1f), alone fulfilled %.3f %s%n",
            one.scenario(),
            seconds,
            work,
            played,
            Weighting.USUAL.of(found),
            found.fulfilled(),
            found.met(),
            found.harm(),
            found.hours(),
            Weighting.USUAL.of(drawn),
            drawn.fulfilled(),
            drawn.met(),
            drawn.harm(),
            drawn.hours(),
            alone.fulfilled(),
            wins ? "" : "LOST");
      }
    }
    System.out.println(won + " of " + (to - from) + " won or tied");
  }

  /** Time that all threads have worked, ns. */
  private static long worked() {
    return ((com.sun.management.OperatingSystemMXBean)
            java.lang.management.ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private static Outcome best(Trials trials) {
    return trials.all().values().stream()
        .min(java.util.Comparator.comparingDouble(Weighting.USUAL::of))
        .orElseThrow();
  }
}
