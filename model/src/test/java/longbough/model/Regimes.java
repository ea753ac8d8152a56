package longbough.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Visit;
import longbough.model.pruning.Where;

/** Regimes for tests: none, a hard one, and any mixture of operations from a seed. */
public final class Regimes {
  public static final Regime NONE = new Regime("none", "", List.of());

  /**
   * Topped, then thinned to the tips, then stripped of sprouts: every process has something to
   * answer.
   */
  public static final Regime HARSH =
      new Regime(
          "harsh",
          "",
          List.of(
              visit(new Timing.Once(2), Season.WINTER, 0.2, new Operation.Top(Double.NaN, 0.3)),
              visit(
                  new Timing.Once(3),
                  Season.SUMMER,
                  0.5,
                  new Operation.Thin(0.4, Where.INNER, CutKind.HEADING)),
              visit(
                  new Timing.Every(4, 2, 30),
                  Season.AUTUMN,
                  0.3,
                  new Operation.StripSprouts(0.8, CutKind.HEADING),
                  new Operation.RemoveDeadwood(0.02)),
              visit(new Timing.Once(5), Season.SPRING, 0.4, new Operation.Raise(4, Double.NaN))));

  private Regimes() {}

  private static Visit visit(Timing timing, Season season, double flush, Operation... operations) {
    return new Visit(timing, season, List.of(operations), new CutMix(0.9 - flush, flush, 0.1));
  }

  /** One to four visits of one to three operations each, all from the seed. */
  public static Regime random(long seed) {
    Random r = new Random(seed);
    List<Visit> visits = new ArrayList<>();
    int count = 1 + r.nextInt(4);
    for (int visit = 0; visit < count; visit++) {
      List<Operation> operations = new ArrayList<>();
      int many = 1 + r.nextInt(3);
      for (int operation = 0; operation < many; operation++) {
        operations.add(operation(r));
      }
      double flush = 0.5 * r.nextDouble();
      double stub = 0.5 * r.nextDouble();
      Season season = Season.values()[r.nextInt(4)];
      visits.add(
          new Visit(timing(r), season, operations, new CutMix(1 - flush - stub, flush, stub)));
    }
    return new Regime("random " + seed, "", visits);
  }

  private static Timing timing(Random r) {
    int first = 1 + r.nextInt(6);
    return switch (r.nextInt(3)) {
      case 0 -> new Timing.Once(first);
      case 1 -> new Timing.Every(first, 1 + r.nextInt(4), 40);
      default ->
          new Timing.When(
              TriggerMeasure.SPROUT_LEAF_SHARE,
              true,
              0.1 * r.nextDouble(),
              first,
              40,
              r.nextInt(3));
    };
  }

  private static Operation operation(Random r) {
    double share = r.nextDouble();
    CutKind cut = CutKind.values()[r.nextInt(2)];
    return switch (r.nextInt(10)) {
      case 0 -> new Operation.RemoveDeadwood(0.1 * share);
      case 1 -> new Operation.Thin(share, Where.values()[r.nextInt(3)], cut);
      case 2 -> new Operation.Raise(8 * share, Double.NaN);
      case 3 -> new Operation.Raise(Double.NaN, share);
      case 4 ->
          new Operation.OpenWindow(
              2, 2 + 8 * share, 360 * r.nextDouble(), 360 * r.nextDouble(), share);
      case 5 -> new Operation.Reduce(0.6 * share, 0.6 * r.nextDouble(), r.nextBoolean());
      case 6 -> new Operation.Top(Double.NaN, 0.7 * share);
      case 7 -> new Operation.Shear(0.6 * share);
      case 8 -> new Operation.StripSprouts(share, cut);
      default ->
          r.nextBoolean()
              ? new Operation.SelectSprouts(1 + 6 * share)
              : new Operation.RestoreTopped(1 + 4 * share);
    };
  }
}
