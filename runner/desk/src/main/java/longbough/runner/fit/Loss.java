package longbough.runner.fit;

import java.util.List;
import longbough.runner.validate.experiment.Finding;
import longbough.runner.validate.experiment.Reading;

/**
 * How much a finding counts against the model. A reading has the distance u from the middle of its
 * band in half widths of the band (1 at its ends), and
 *
 * <pre>
 *   loss = 0.1 min(u, 1)^2 + far(u - 1)
 *   far(x) = 0            for x &lt;= 0
 *          = x^2          for x &lt;= 1
 *          = 1 + 2 ln x   beyond
 * </pre>
 *
 * so that a value in its band is drawn but weakly to the middle, one outside strongly to the band,
 * and a check that the model can't meet doesn't drown the others. Where both ends are positive the
 * distance is taken on the logarithms, since such bands are published as "times" and "over": half
 * and twice the middle are as far off. A band with one end has no width of its own; a quarter of
 * the size of the end stands for half of it. A check counts the mean over its readings, whatever
 * their number, and 1 more where not even its direction holds. Where nothing but the verdict is
 * known a miss counts 1.
 */
public final class Loss {
  /** What a value at the end of its band counts; small against a miss. */
  private static final double WITHIN = 0.1;

  private static final double WRONG_WAY = 1;
  private static final double UNEXPLAINED = 1;

  /** Half of the width of a band that has one end, over the size of that end. */
  private static final double ONE_END = 0.25;

  /**
   * The least share of a band's middle that a reading is taken for, so that its logarithm exists.
   */
  private static final double LEAST_SHARE = 0.01;

  /** A reading that gave no number counts as one so far off, in half widths. */
  private static final double NO_NUMBER = 20;

  private Loss() {}

  /** What a check counts; nothing where it was not tried. */
  public static double of(Finding finding) {
    if (finding == null) {
      return 0;
    }
    return verdict(finding) + (finding.rightDirection() ? 0 : WRONG_WAY);
  }

  private static double verdict(Finding finding) {
    List<Reading> readings = finding.readings();
    double sum = 0;
    boolean allWithin = true;
    for (Reading reading : readings) {
      double u = distance(reading);
      allWithin &= u <= 1;
      sum += WITHIN * Math.min(u, 1) * Math.min(u, 1) + far(u - 1);
    }
    double mean = readings.isEmpty() ? 0 : sum / readings.size();
    // What was missed stands in no reading, e.g. an order of several trees.
    return mean + (allWithin && !finding.inBand() ? UNEXPLAINED : 0);
  }

  private static double far(double x) {
    if (x <= 0) {
      return 0;
    }
    return x <= 1 ? x * x : 1 + 2 * Math.log(x);
  }

  /** Distance from the middle of the band in half widths; in a band of one end 1 is at the end. */
  static double distance(Reading reading) {
    if (!Double.isFinite(reading.got())) {
      return NO_NUMBER;
    }
    boolean noLow = Double.isNaN(reading.low());
    boolean noHigh = Double.isNaN(reading.high());
    if (noLow && noHigh) {
      return 0;
    }
    if (noLow || noHigh || reading.low() == reading.high()) {
      return beyondOneEnd(reading, noLow, noHigh);
    }
    if (reading.low() > 0) {
      double low = Math.log(reading.low());
      double high = Math.log(reading.high());
      double middle = (low + high) / 2;
      double got = Math.max(reading.got(), LEAST_SHARE * Math.exp(middle));
      return Math.abs(Math.log(got) - middle) / ((high - low) / 2);
    }
    double middle = (reading.low() + reading.high()) / 2;
    return Math.abs(reading.got() - middle) / (reading.high() - middle);
  }

  private static double beyondOneEnd(Reading reading, boolean noLow, boolean noHigh) {
    double end = noLow ? reading.high() : reading.low();
    double half = end == 0 ? 1 : ONE_END * Math.abs(end);
    double beyond = reading.got() - end;
    if (noHigh) {
      beyond = -beyond;
    } else if (!noLow) {
      return beyond == 0 ? 0 : 1 + Math.abs(beyond) / half;
    }
    return Math.max(0, 1 + beyond / half);
  }
}
