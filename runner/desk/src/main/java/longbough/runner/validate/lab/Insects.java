package longbough.runner.validate.lab;

import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.History;
import longbough.model.process.Weather;
import longbough.model.process.YearContext;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;

/**
 * Trees that insects strip in known years. The model draws insect years with a chance; so the
 * futures are sought in which they come in just the year wanted. Which futures those are depends on
 * the weather's draws alone, never on what becomes of the tree.
 */
public final class Insects {
  private static final String RISK = "species.defoliation_risk";
  private static final int SEARCHED = 400_000;

  private Insects() {}

  /** Trees in so many futures, in which insects come in one year and no other. */
  public static Lab once(Lab lab, int year, int futures) {
    return running(lab, year, year, futures);
  }

  /** The same for several years running, from the first to the last. */
  public static Lab running(Lab lab, int first, int last, int futures) {
    double risk = (last - first + 1.0) / lab.years();
    Lab risky = lab.with("weather.frost_chance", 0).with(RISK, risk);
    YearContext context =
        new YearContext(
            new TreeState(), new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = risky.meanParameters();
    Weather weather = new Weather(lab.climate(), lab.site());
    int[] chosen =
        IntStream.range(0, SEARCHED)
            .filter(member -> only(context, weather, member, first, last, lab.years()))
            .limit(futures)
            .toArray();
    if (chosen.length < futures) {
      throw new IllegalStateException(
          "too few futures with insects in years " + first + " to " + last + " alone");
    }
    return risky.inFutures(chosen);
  }

  /** Trees that insects strip every year. */
  public static Lab always(Lab lab) {
    return lab.with("weather.frost_chance", 0).with(RISK, 1);
  }

  /** What those trees lose when insects come. */
  public static Lab eating(Lab lab, double share) {
    return eating(lab, share, share);
  }

  /** What those trees lose lies between a least and a most share, drawn anew each time. */
  public static Lab eating(Lab lab, double least, double most) {
    return lab.with("weather.defoliation_least", least).with("weather.defoliation_most", most);
  }

  /** The twins of those trees, which insects spare. */
  public static Lab spared(Lab lab) {
    return lab.with(RISK, 0);
  }

  private static boolean only(
      YearContext context, Weather weather, int member, int first, int last, int years) {
    for (int year = 1; year <= years; year++) {
      context.random.start(Lab.SEED, member, year, weather.name());
      weather.run(context);
      if (context.site.insectDefoliation > 0 != (year >= first && year <= last)) {
        return false;
      }
    }
    return true;
  }

  /** A measure summed over the futures in which both live, treated over twin. */
  public static double ratio(
      Played treated, Played twin, int year, ToDoubleFunction<History> measure) {
    double above = 0;
    double below = 0;
    for (int i = 0; i < treated.futures().size(); i++) {
      History one = treated.futures().get(i);
      History other = twin.futures().get(i);
      if (Played.alive(one, year) && Played.alive(other, year)) {
        above += measure.applyAsDouble(one);
        below += measure.applyAsDouble(other);
      }
    }
    return above / below;
  }
}
