package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.state.CauseOfDeath;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F45: share of deaths with a growth decline before them. Rings of the five years before death over
 * those of the same futures' trees that live on, in the same years; windthrow and breakage are left
 * out, as in the tree-ring records.
 */
public final class DeclineBeforeDeath implements Experiment {
  private static final List<String> BROADLEAVES = List.of("quercus-rubra", "fagus-sylvatica");
  private static final List<String> CONIFERS = List.of("pinus-sylvestris", "picea-abies");
  private static final int YEARS = 40;
  private static final int FUTURES = 300;
  private static final double CLOSED_IN = 0.5;
  private static final int WINDOW = 5;
  private static final double DECLINED = 0.85;

  @Override
  public List<String> checks() {
    return List.of("F45");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Tally broadleaf = new Tally(BROADLEAVES);
    Tally conifer = new Tally(CONIFERS);
    int deaths = broadleaf.deaths + conifer.deaths;
    double share = (broadleaf.declined + conifer.declined) / (double) deaths;
    double longBroadleaf = broadleaf.years / (double) broadleaf.declined;
    double longConifer = conifer.years / (double) conifer.declined;
    return List.of(
        new Finding(
            "F45",
            String.format(
                Locale.ROOT,
                "%.2f of %d deaths; declines of %.1f years in broadleaves, %.1f in conifers",
                share,
                deaths,
                longBroadleaf,
                longConifer),
            "0.70 to 1.00; longer in conifers",
            checks.get("F45").holds(share),
            longConifer > longBroadleaf,
            "Red oak, beech, Scots pine and Norway spruce of 40 cm, continental climate, half closed in, in"
                + " good condition at first, 300 futures of 40 years, deaths other than by wind; declined"
                + " where the last five rings before death are below 0.85 of those of the living.",
            checks.get("F45").readings(share)));
  }

  /** Deaths and declines among some species. */
  private static final class Tally {
    private int deaths;
    private int declined;
    private int years;

    Tally(List<String> species) {
      for (String one : species) {
        Played played =
            Lab.of(one, 0.4, Lab.CONTINENTAL, YEARS, FUTURES).crowded(CLOSED_IN).alone();
        double[] living = new double[YEARS + 1];
        for (int year = 1; year <= YEARS; year++) {
          int at = year;
          living[year] = played.meanOf(year, h -> ring(h, at));
        }
        played.futures().forEach(h -> count(h, living));
      }
    }

    private void count(History h, double[] living) {
      int last = h.deathYear() - 1;
      boolean wind = h.cause() == CauseOfDeath.STEM_FAILURE || h.cause() == CauseOfDeath.UPROOTED;
      if (last > YEARS || last < WINDOW || wind) {
        return;
      }
      deaths++;
      double own = 0;
      double others = 0;
      for (int year = last - WINDOW + 1; year <= last; year++) {
        own += ring(h, year);
        others += living[year];
      }
      if (own < DECLINED * others) {
        declined++;
        for (int year = last; year > 0 && ring(h, year) < DECLINED * living[year]; year--) {
          years++;
        }
      }
    }

    private static double ring(History h, int year) {
      return h.value(YearColumn.DBH_CM, year) - h.value(YearColumn.DBH_CM, year - 1);
    }
  }
}
