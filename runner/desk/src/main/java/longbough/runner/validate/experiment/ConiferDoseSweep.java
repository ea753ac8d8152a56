package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.runner.validate.lab.Raising;
import longbough.runner.validate.lab.StandForm;

/**
 * P03a, P03b: the dose at which diameter growth starts to fall, closed in and in the open. The
 * start is the break of a line that is flat at 1 and then falls, fitted by least squares.
 * Simplified: Norway spruce stands in. The shading stand is neighbours all round, as tall as the
 * tree, which has the height and crown of conifers of young plantations (live crown 0.82, published
 * 0.7 to 0.9).
 */
public final class ConiferDoseSweep implements Experiment {
  private static final double STAND = 0;
  private static final int YEARS = 3;

  /** So many that the small loss of the first dose stands out from chance. */
  private static final int FUTURES = 60;

  private static final int DOSES = 16;
  private static final double STEP = 0.05;
  private static final int COMPARED = 11;
  private static final double ENOUGH_ALIVE = 0.5;
  private static final String SET_UP =
      "Norway spruce of 20 cm, maritime, 60 futures; raised in winter of year 1 by 0 to 80 % of the"
          + " live crown's length, growth over 3 years, up to"
          + " the dose that half of the trees outlive; ";

  @Override
  public List<String> checks() {
    return List.of("P03a", "P03b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Lab open = Lab.of("picea-abies", 0.20, Lab.MARITIME, YEARS, FUTURES);
    double[] crowded = sweep(open.crowded(STAND).shaped(StandForm.YOUNG_CONIFER));
    double[] free = sweep(open);
    double startCrowded = start(crowded);
    double startFree = start(free);
    return List.of(
        finding(
            checks.get("P03a"),
            startCrowded,
            startCrowded >= STEP && crowded[crowded.length - 1] < crowded[1],
            SET_UP + "closed in all round; ratios " + words(crowded)),
        finding(
            checks.get("P03b"),
            startFree,
            free[1] < 1 && below(free, crowded),
            SET_UP + "in the open; ratios " + words(free)));
  }

  private static Finding finding(Check check, double start, boolean direction, String setUp) {
    return new Finding(
        check.id(),
        String.format(Locale.ROOT, "%.2f", start),
        check.low() + " to " + check.high(),
        check.holds(start),
        direction,
        setUp,
        check.readings(start));
  }

  private static boolean below(double[] free, double[] crowded) {
    for (int dose = 1; dose < Math.min(COMPARED, Math.min(free.length, crowded.length)); dose++) {
      if (free[dose] >= crowded[dose]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Growth over that of the tree left alone, up to the last dose that half of the trees outlive.
   */
  private static double[] sweep(Lab lab) {
    double alone = lab.alone().growthCm(0, YEARS);
    double[] ratio = new double[DOSES + 1];
    ratio[0] = 1;
    for (int dose = 1; dose <= DOSES; dose++) {
      Played raised = lab.play(Lab.once(1, Raising.crown(lab, dose * STEP)));
      if (raised.survival(YEARS) < ENOUGH_ALIVE) {
        return Arrays.copyOf(ratio, dose);
      }
      ratio[dose] = raised.growthCm(0, YEARS) / alone;
    }
    return ratio;
  }

  /** Dose at the break of the best flat-then-falling line. */
  private static double start(double[] ratio) {
    double best = Double.POSITIVE_INFINITY;
    double start = Double.NaN;
    for (int hundredth = 0; hundredth < 100 * STEP * (ratio.length - 1); hundredth++) {
      double error = error(ratio, hundredth / 100.0);
      if (error < best) {
        best = error;
        start = hundredth / 100.0;
      }
    }
    return start;
  }

  private static double error(double[] ratio, double start) {
    double loss = 0;
    double square = 0;
    for (int dose = 0; dose < ratio.length; dose++) {
      double past = Math.max(0, dose * STEP - start);
      loss += past * (1 - ratio[dose]);
      square += past * past;
    }
    double slope = square > 0 ? loss / square : 0;
    double error = 0;
    for (int dose = 0; dose < ratio.length; dose++) {
      double off = 1 - slope * Math.max(0, dose * STEP - start) - ratio[dose];
      error += off * off;
    }
    return error;
  }

  private static String words(double[] ratio) {
    List<String> words = new ArrayList<>();
    for (double value : ratio) {
      words.add(String.format(Locale.ROOT, "%.2f", value));
    }
    return String.join(" ", words) + ".";
  }
}
