package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;
import longbough.runner.validate.lab.TrunkSprouts;

/** P08a, P08b: open-grown black cherry cleared to half and to three quarters of its height. */
public final class ClearedCherry implements Experiment {
  private static final int YEARS = 3;
  private static final double NEARLY_ALL = 0.9;

  @Override
  public List<String> checks() {
    return List.of("P08a", "P08b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab lab = Lab.of("prunus-serotina", 0.15, Lab.CONTINENTAL, YEARS, 30);
    Played alone = lab.alone();
    Played half = lab.play(Lab.once(1, Raising.stem(lab, 0.5)), 1);
    Played most = lab.play(Lab.once(1, Raising.stem(lab, 0.75)), 1);
    double a = half.growthCm(0, YEARS) / alone.growthCm(0, YEARS);
    double b = most.growthCm(0, YEARS) / alone.growthCm(0, YEARS);
    double sproutsHalf = TrunkSprouts.upTo(half, 1, 0.5 * Raising.heightM(lab));
    double sproutsMost = TrunkSprouts.upTo(most, 1, 0.75 * Raising.heightM(lab));
    double ratio = sproutsMost / sproutsHalf;
    Check first = checks.get("P08a");
    Check second = checks.get("P08b");
    return List.of(
        new Finding(
            "P08a",
            String.format(Locale.ROOT, "%.2f (P08b: %.2f)", a, b),
            first.low() + " to " + first.high(),
            first.holds(a),
            a > b,
            setUp(half),
            first.readings(a)),
        new Finding(
            "P08b",
            String.format(
                Locale.ROOT, "%.1f (%.1f against %.1f sprouts)", ratio, sproutsMost, sproutsHalf),
            "at least " + second.low(),
            second.holds(ratio),
            ratio > 1 && b < NEARLY_ALL,
            setUp(most),
            second.readings(ratio)));
  }

  private static String setUp(Played played) {
    return String.format(
        Locale.ROOT,
        "Black cherry of 15 cm, open-grown, continental, 30 futures; cleared in winter of year 1,"
            + " which took %.0f %% of the foliage; sprouts on the cleared trunk at the end of year 1.",
        100 * played.dose(1));
  }
}
