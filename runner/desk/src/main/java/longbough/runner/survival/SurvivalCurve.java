package longbough.runner.survival;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The product-limit estimate of survival (Kaplan and Meier 1958) with Greenwood's variance and a 95
 * % band on the scale of log(-log S), which stays between 0 and 1:
 *
 * <pre>
 * S(t) = Π (1 - d_i / n_i),   v(t) = Σ d_i / (n_i (n_i - d_i)),   standard error S √v
 * band = S^exp(± z √v / |ln S|),   z = 1.96
 * </pre>
 *
 * over the times t_i ≤ t of deaths, d_i deaths at t_i of n_i still under watch just before. Where
 * nobody or everybody has died that band has no width; there the exact binomial limits stand
 * instead: from (α/2)^(1/n) to 1, or from 0 to 1 - (α/2)^(1/n), α = 0.05, n all lives. Sources:
 * Kaplan E.L., Meier P. 1958. Journal of the American Statistical Association 53:457-481; Greenwood
 * M. 1926; Kalbfleisch J.D., Prentice R.L. 1980. The statistical analysis of failure time data
 * (from memory). The band says how far chance may lead a finite number of futures away from
 * endlessly many; it says nothing of errors in the model.
 */
public record SurvivalCurve(List<Step> steps) {
  static final double Z = 1.959963984540054;
  static final double ALPHA = 0.05;

  /**
   * The curve from one time of death on.
   *
   * @param time time of death
   * @param atRisk lives under watch just before
   * @param deaths deaths at that time
   * @param survival share alive after it
   * @param standardError Greenwood's, of the share alive
   * @param low lower end of the 95 % band
   * @param high upper end
   */
  public record Step(
      double time,
      int atRisk,
      int deaths,
      double survival,
      double standardError,
      double low,
      double high) {}

  public SurvivalCurve {
    steps = List.copyOf(steps);
  }

  /**
   * The curve of some lives.
   *
   * @param times time of death, or to which a life was watched
   * @param died whether that life ended; a life watched to the time of a death counts as at risk
   */
  public static SurvivalCurve of(double[] times, boolean[] died) {
    double[] deaths =
        java.util.stream.IntStream.range(0, times.length)
            .filter(i -> died[i])
            .mapToDouble(i -> times[i])
            .distinct()
            .sorted()
            .toArray();
    List<Step> steps = new ArrayList<>();
    double survival = 1;
    double variance = 0;
    for (double time : deaths) {
      int atRisk = (int) Arrays.stream(times).filter(t -> t >= time).count();
      int ended = 0;
      for (int i = 0; i < times.length; i++) {
        ended += died[i] && times[i] == time ? 1 : 0;
      }
      survival *= 1 - ended / (double) atRisk;
      variance += ended / (double) (atRisk * (atRisk - ended));
      steps.add(step(time, atRisk, ended, survival, variance, times.length));
    }
    return new SurvivalCurve(steps);
  }

  private static Step step(
      double time, int atRisk, int deaths, double survival, double variance, int lives) {
    if (deaths == atRisk) {
      return new Step(time, atRisk, deaths, 0, 0, 0, 1 - exactLimit(lives));
    }
    double width = Z * Math.sqrt(variance) / Math.abs(Math.log(survival));
    return new Step(
        time,
        atRisk,
        deaths,
        survival,
        survival * Math.sqrt(variance),
        Math.pow(survival, Math.exp(width)),
        Math.pow(survival, Math.exp(-width)));
  }

  /** Least share alive that is in keeping with n of n alive. */
  static double exactLimit(int lives) {
    return Math.pow(ALPHA / 2, 1.0 / lives);
  }

  /** The last step up to and with a time; null before the first death. */
  public Step at(double time) {
    Step last = null;
    for (Step step : steps) {
      if (step.time() <= time) {
        last = step;
      }
    }
    return last;
  }
}
