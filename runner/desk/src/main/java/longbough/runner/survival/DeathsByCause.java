package longbough.runner.survival;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import longbough.model.state.CauseOfDeath;

/**
 * Cumulative incidence of each cause of death, causes competing for the same lives (Aalen and
 * Johansen):
 *
 * <pre>
 * F_k(t) = Σ S(t_i -) d_ki / n_i
 * </pre>
 *
 * over the times t_i ≤ t of deaths: S(t_i -) survival just before, d_ki deaths of cause k among n_i
 * at risk. Over all causes and the survivors the shares add up to 1, which one curve a cause that
 * treats other deaths as censored would not do. Source: Aalen O.O., Johansen S. 1978. Scandinavian
 * Journal of Statistics 5:141-150 (from memory).
 */
public final class DeathsByCause {
  private final double[] times;
  private final CauseOfDeath[] causes;

  /**
   * Lives watched to a time.
   *
   * @param times time of death, or to which a life was watched
   * @param causes what ended it; {@link CauseOfDeath#NONE} for a life still going on
   */
  public DeathsByCause(double[] times, CauseOfDeath[] causes) {
    this.times = times.clone();
    this.causes = causes.clone();
  }

  /** Share of lives ended by each cause up to and with a time. */
  public Map<CauseOfDeath, Double> until(double time) {
    Map<CauseOfDeath, Double> shares = new EnumMap<>(CauseOfDeath.class);
    for (CauseOfDeath cause : all()) {
      shares.put(cause, 0.0);
    }
    double survival = 1;
    for (double at : deathTimes()) {
      if (at > time) {
        break;
      }
      int atRisk = 0;
      int deaths = 0;
      for (double watched : times) {
        atRisk += watched >= at ? 1 : 0;
      }
      for (int i = 0; i < times.length; i++) {
        if (times[i] == at && causes[i] != CauseOfDeath.NONE) {
          deaths++;
          shares.merge(causes[i], survival / atRisk, Double::sum);
        }
      }
      survival *= 1 - deaths / (double) atRisk;
    }
    return shares;
  }

  private Set<Double> deathTimes() {
    Set<Double> sorted = new TreeSet<>();
    for (int i = 0; i < times.length; i++) {
      if (causes[i] != CauseOfDeath.NONE) {
        sorted.add(times[i]);
      }
    }
    return sorted;
  }

  /** Every cause, in a fixed order. */
  public static List<CauseOfDeath> all() {
    return List.of(CauseOfDeath.values()).stream().filter(c -> c != CauseOfDeath.NONE).toList();
  }
}
