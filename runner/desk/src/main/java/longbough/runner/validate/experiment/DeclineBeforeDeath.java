package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.state.CauseOfDeath;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F45: share of deaths with a growth decline before them, and how long declines last. Rings of the
 * five years before death over those of the same futures' trees that live on, in the same years;
 * windthrow and breakage are left out, as in the tree-ring records. A decline reaches back to the
 * last ring that was not narrow.
 *
 * <p>Eighty years, of which the deaths of the last forty count: the published declines last up to a
 * century, and of the trees that fall ill within forty years only those that decline fast are dead
 * at their end. Four broadleaves and four conifers, since the source has 36 species. Ailments
 * strike all species alike in one future, so that more species in the same futures would only
 * repeat them: each broadleaf has futures of its own, and shares them with one conifer, so that
 * chance strikes both groups alike. Deaths by insects, bark beetles above all, are told apart,
 * since the source found short declines before them; conifers must decline for longer with them
 * counted in.
 */
public final class DeclineBeforeDeath implements Experiment {
  private static final List<String> BROADLEAVES =
      List.of("quercus-rubra", "fagus-sylvatica", "acer-saccharum", "fraxinus-excelsior");
  private static final List<String> CONIFERS =
      List.of("pinus-sylvestris", "picea-abies", "abies-alba", "pseudotsuga-menziesii");

  /** So that they are of middle size in the years that count. */
  private static final double DBH_M = 0.3;

  private static final int YEARS = 80;
  private static final int COUNTED_AFTER = 40;
  private static final int FUTURES = 120;
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
    double share =
        (broadleaf.declined + conifer.declined) / (double) (broadleaf.deaths + conifer.deaths);
    return List.of(
        new Finding(
            "F45",
            String.format(
                Locale.ROOT,
                "%.2f of %d deaths; declines of %.1f years in broadleaves, %.1f in conifers (%.1f"
                    + " where insects killed)",
                share,
                broadleaf.deaths + conifer.deaths,
                broadleaf.length(),
                conifer.length(),
                conifer.eatenYears / (double) conifer.eaten),
            "0.70 to 1.00; longer in conifers",
            checks.get("F45").holds(share),
            conifer.length() > broadleaf.length(),
            "Red oak, beech, sugar maple and ash, Scots pine, Norway spruce, silver fir and"
                + " Douglas-fir of 30 cm, continental climate, half closed in, in good condition at first, 120"
                + " futures each of 80 years, deaths of the last 40 other than by wind; declined where"
                + " the last five rings before death are below 0.85 of those of the living, back to the"
                + " last single ring that is not.",
            checks.get("F45").readings(share)));
  }

  /** Deaths and declines among some species. */
  private static final class Tally {
    private int deaths;
    private int declined;
    private int years;
    private int eaten;
    private int eatenYears;

    Tally(List<String> species) {
      for (int s = 0; s < species.size(); s++) {
        Played played =
            Lab.of(species.get(s), DBH_M, Lab.CONTINENTAL, YEARS, FUTURES)
                .crowded(CLOSED_IN)
                .inFutures(IntStream.range(s * FUTURES, (s + 1) * FUTURES).toArray())
                .alone();
        double[] living = new double[YEARS + 1];
        for (int year = 1; year <= YEARS; year++) {
          int at = year;
          living[year] = played.meanOf(year, h -> ring(h, at));
        }
        played.futures().forEach(h -> count(h, living));
      }
    }

    private double length() {
      return years / (double) declined;
    }

    private void count(History h, double[] living) {
      int last = h.deathYear() - 1;
      boolean wind = h.cause() == CauseOfDeath.STEM_FAILURE || h.cause() == CauseOfDeath.UPROOTED;
      if (h.deathYear() > YEARS || last <= COUNTED_AFTER || wind) {
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
        int length = 0;
        for (int year = last; year > 0 && ring(h, year) < DECLINED * living[year]; year--) {
          length++;
        }
        declined++;
        years += length;
        if (h.cause() == CauseOfDeath.INSECTS) {
          eaten++;
          eatenYears += length;
        }
      }
    }

    private static double ring(History h, int year) {
      return h.value(YearColumn.DBH_CM, year) - h.value(YearColumn.DBH_CM, year - 1);
    }
  }
}
