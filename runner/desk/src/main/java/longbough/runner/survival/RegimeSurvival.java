package longbough.runner.survival;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.IntStream;
import longbough.model.history.History;
import longbough.model.state.CauseOfDeath;
import longbough.runner.compare.Band;
import longbough.runner.compare.RegimeResult;

/** Survival and causes of death under one regime, by year; every future is watched to the end. */
public final class RegimeSurvival {
  private final int years;
  private final int lives;
  private final SurvivalCurve curve;
  private final DeathsByCause causes;

  private RegimeSurvival(int years, int lives, SurvivalCurve curve, DeathsByCause causes) {
    this.years = years;
    this.lives = lives;
    this.curve = curve;
    this.causes = causes;
  }

  public static RegimeSurvival of(RegimeResult result, int years) {
    History[] members = result.members();
    double[] times =
        Arrays.stream(members).mapToDouble(h -> Math.min(h.deathYear(), years)).toArray();
    CauseOfDeath[] causes =
        Arrays.stream(members)
            .map(h -> h.deathYear() <= years ? h.cause() : CauseOfDeath.NONE)
            .toArray(CauseOfDeath[]::new);
    boolean[] died = new boolean[members.length];
    IntStream.range(0, died.length).forEach(i -> died[i] = causes[i] != CauseOfDeath.NONE);
    return new RegimeSurvival(
        years, members.length, SurvivalCurve.of(times, died), new DeathsByCause(times, causes));
  }

  /** Share alive at the end of each year with its 95 % band. */
  public Band band() {
    Band band = new Band(new double[years + 1], new double[years + 1], new double[years + 1]);
    for (int year = 0; year <= years; year++) {
      band.low()[year] = low(year);
      band.median()[year] = alive(year);
      band.high()[year] = high(year);
    }
    return band;
  }

  public double alive(int year) {
    SurvivalCurve.Step step = curve.at(year);
    return step == null ? 1 : step.survival();
  }

  /** Lower end of the 95 % band; the tree as measured is alive for certain. */
  public double low(int year) {
    SurvivalCurve.Step step = curve.at(year);
    return step != null ? step.low() : year == 0 ? 1 : SurvivalCurve.exactLimit(lives);
  }

  public double high(int year) {
    SurvivalCurve.Step step = curve.at(year);
    return step == null ? 1 : step.high();
  }

  public double standardError(int year) {
    SurvivalCurve.Step step = curve.at(year);
    return step == null ? 0 : step.standardError();
  }

  /** Share of futures ended by each cause up to and with a year. */
  public Map<CauseOfDeath, Double> causes(int year) {
    return causes.until(year);
  }
}
