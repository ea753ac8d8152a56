package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longbough.model.state.CauseOfDeath;
import longbough.runner.compare.Comparison;
import longbough.runner.survival.DeathsByCause;
import longbough.runner.survival.RegimeSurvival;

/**
 * What the tree has died of by the last year, one bar a regime: shares of all futures, the rest
 * still alive.
 *
 * @param bars the regimes, the reference first
 * @param years length of the comparison
 * @param futures number of futures
 */
public record CauseBars(List<Bar> bars, int years, int futures) {
  static final String FILE = "causes-of-death";
  static final int WIDTH = LineChart.WIDTH;

  /**
   * One regime.
   *
   * @param regime its name
   * @param style how it looks in every chart
   * @param alive share of futures in which the tree lives at the end
   * @param causes share ended by each cause
   */
  public record Bar(
      String regime, RegimeStyle style, double alive, Map<CauseOfDeath, Double> causes) {}

  public CauseBars {
    bars = List.copyOf(bars);
  }

  public static CauseBars of(Comparison comparison) {
    List<Bar> bars = new ArrayList<>();
    for (int regime = 0; regime < comparison.regimes().size(); regime++) {
      RegimeSurvival survival =
          RegimeSurvival.of(comparison.regimes().get(regime), comparison.years());
      bars.add(
          new Bar(
              comparison.regimes().get(regime).name(),
              RegimeStyle.of(regime),
              survival.alive(comparison.years()),
              survival.causes(comparison.years())));
    }
    return new CauseBars(bars, comparison.years(), comparison.members());
  }

  /** Causes that end any future under any regime. */
  public List<CauseOfDeath> occurring() {
    return DeathsByCause.all().stream()
        .filter(cause -> bars.stream().anyMatch(bar -> bar.causes().get(cause) > 0))
        .toList();
  }

  String heading() {
    return "Causes of death within " + years + (years == 1 ? " year" : " years");
  }

  String reading() {
    return "Share of "
        + futures
        + " futures ended by each cause; causes compete, so that with the living they make up 100 %";
  }

  /** What the chart shows in words. */
  String description() {
    StringBuilder text = new StringBuilder(heading()).append('.');
    for (Bar bar : bars) {
      text.append(' ').append(bar.regime()).append(": alive ").append(percent(bar.alive()));
      bar.causes()
          .forEach(
              (cause, share) -> {
                if (share > 0) {
                  text.append(", ").append(cause.label()).append(' ').append(percent(share));
                }
              });
      text.append('.');
    }
    return text.toString();
  }

  static String percent(double share) {
    return ChartText.value(100 * share, 100) + " %";
  }
}
