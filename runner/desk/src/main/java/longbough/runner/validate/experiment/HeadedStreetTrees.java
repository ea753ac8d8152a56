package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Operation.Reduce;
import longbough.model.pruning.Operation.Thin;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.LongestSprout;
import longbough.runner.validate.lab.Played;

/**
 * P10a, P10b: regrowth of street trees after heading cuts, and after removal and reduction cuts.
 * Simplified: a cohort of sprouts knows only its mean length, from which {@link LongestSprout}
 * reckons the longest shoot; regrowth of the lateral itself after a reduction cut is not followed.
 */
public final class HeadedStreetTrees implements Experiment {
  private static final List<String> SPECIES =
      List.of("acer-saccharinum", "acer-platanoides", "fraxinus-pennsylvanica");
  private static final double DOSE = 0.25;
  private static final double SPREAD = 0.2;
  private static final String SET_UP =
      "Silver maple, Norway maple and green ash of 30 cm, open-grown, continental, 20 futures;"
          + " cut in winter of year 1: ";

  @Override
  public List<String> checks() {
    return List.of("P10a", "P10b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] first = new double[SPECIES.size()];
    double[] reduced = new double[SPECIES.size()];
    double[] removed = new double[SPECIES.size()];
    boolean within = true;
    boolean declines = true;
    boolean slower = true;
    Check a = checks.get("P10a");
    for (int i = 0; i < first.length; i++) {
      Lab lab = Lab.of(SPECIES.get(i), 0.30, Lab.CONTINENTAL, 2, 20);
      Played headed = lab.play(Lab.once(1, tips(CutKind.HEADING)), 1, 2);
      first[i] = longestM(headed, 1);
      within &= a.holds(first[i]);
      declines &= longestM(headed, 2) - first[i] < first[i];
      reduced[i] = regrowth(lab, new Reduce(Double.NaN, SPREAD, true)) / first[i];
      removed[i] = regrowth(lab, tips(CutKind.REMOVAL)) / first[i];
      slower &= reduced[i] < 1 && removed[i] < 1;
    }
    return List.of(
        new Finding(
            "P10a",
            words(first) + " m",
            a.low() + " to " + a.high() + ", each",
            within,
            declines,
            SET_UP + "a quarter of the foliage headed at the limbs' ends.",
            a.readings(first)),
        new Finding(
            "P10b",
            "reduction " + words(reduced) + ", removal " + words(removed),
            "each below 1",
            slower,
            slower,
            SET_UP
                + "a quarter of the foliage at the limbs' ends by removal cuts, and a fifth of the spread reduced"
                + " to laterals.",
            Stream.of(reduced, removed)
                .flatMapToDouble(DoubleStream::of)
                .mapToObj(ratio -> Reading.atMost(ratio, 1))
                .toList()));
  }

  private static Thin tips(CutKind kind) {
    return new Thin(DOSE, Where.TIPS, kind);
  }

  private static double regrowth(Lab lab, Operation operation) {
    return longestM(lab.play(Lab.once(1, operation), 1), 1);
  }

  private static double longestM(Played played, int year) {
    return played.meanState(year, state -> LongestSprout.lengthM(state.sprouts));
  }

  private static String words(double[] values) {
    return String.format(Locale.ROOT, "%.2f, %.2f, %.2f", values[0], values[1], values[2]);
  }
}
