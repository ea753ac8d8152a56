package longbough.runner.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.history.TreeEvent;
import longbough.model.pruning.Regime;
import longbough.model.state.CauseOfDeath;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Metric;
import longbough.runner.compare.Summary;
import longbough.runner.table.TerminalTable;
import org.junit.jupiter.api.Test;

class VerdictTest {

  @Test
  void sentencesCarryTheirCounts() {
    Comparison comparison = InventedHistories.comparison(200, 30);
    Summary summary = Summary.of(comparison);
    List<String> sentences = Verdict.of(summary);
    long alive = Math.round(200 * summary.get(3, Metric.ALIVE_AT_END).mean());
    assertThat(sentences.get(0)).contains("of 200 futures", alive + " under \u201ctop\u201d");
    int better = summary.difference(0, 3, Metric.LEAF_AREA_MEAN_M2).better();
    assertThat(sentences.get(1))
        .startsWith("\u201cleave alone\u201d keeps most leaf")
        .contains("almost surely better than \u201ctop\u201d, in " + better + " of 200 futures");
  }

  @Test
  void oneRegimeNeedsNoComparison() {
    Comparison alone =
        InventedHistories.comparison(1, 3, List.of(new Regime("wait", "", List.of())));
    assertThat(Verdict.of(Summary.of(alone)))
        .containsExactly("After 3 years the tree lives in 1 of 1 future under \u201cwait\u201d.");
  }

  @Test
  void equalRegimesAreNotToldApart() {
    Comparison same = InventedHistories.comparison(4, 3);
    Comparison twice =
        new Comparison(same.input(), List.of(same.regimes().get(0), same.regimes().get(0)), 0, 0);
    assertThat(Verdict.of(Summary.of(twice)))
        .filteredOn(sentence -> sentence.startsWith("Leaf area"))
        .singleElement()
        .asString()
        .contains("hardly any difference between the regimes")
        .doesNotContain("better");
  }

  @Test
  void chainIsInOrderOfYearsAndJoinsWhatIsOfAKind() {
    List<Chain.Link> links =
        Chain.of(
            List.of(
                new TreeEvent.Died(9, CauseOfDeath.STARVED),
                new TreeEvent.Pruned(2, "top", 0.6, 0.18),
                new TreeEvent.Sprouted(2, 40),
                new TreeEvent.Sprouted(2, 12),
                new TreeEvent.LimbDied(4, 3, 0.1),
                new TreeEvent.LimbDied(4, 5, 0.1)));
    assertThat(links.stream().map(Chain.Link::text))
        .containsExactly(
            "year 2: topped (60\u00a0% of the foliage, largest cut 18\u00a0cm); 52 new sprouts",
            "year 4: 2 limbs died", "year 9: the tree died (starved)");
  }

  @Test
  void shortChainKeepsDeathAndTheFirstOfEachWork() {
    List<TreeEvent> events =
        List.of(
            new TreeEvent.Pruned(1, "top", 0.5, 0.2),
            new TreeEvent.Sprouted(1, 90),
            new TreeEvent.Sprouted(2, 9),
            new TreeEvent.WoundClosed(2, 0.1, 3),
            new TreeEvent.Pruned(4, "top", 0.5, 0.2),
            new TreeEvent.ReserveLow(5, 0.2),
            new TreeEvent.Pruned(8, "top", 0.5, 0.2),
            new TreeEvent.Died(9, CauseOfDeath.DROUGHT));
    assertThat(Chain.telling(events, 3).stream().map(Chain.Link::text))
        .containsExactly(
            "year 1: topped (50\u00a0% of the foliage, largest cut 20\u00a0cm); 90 new sprouts",
            "year 5: reserve low (20\u00a0% of its ceiling)", "year 9: the tree died (drought)");
  }

  @Test
  void figuresHaveThreeDigits() {
    assertThat(Figures.number(1234.5)).isEqualTo("1\u00a0235");
    assertThat(Figures.number(12.345)).isEqualTo("12.3");
    assertThat(Figures.number(-0.01234)).isEqualTo("\u22120.01");
    assertThat(Figures.number(100)).isEqualTo("100");
    assertThat(Figures.number(Double.NaN)).isEqualTo("\u2013");
    assertThat(Figures.of(Metric.FAILURE_PROBABILITY_END, 0.0042, "EUR"))
        .isEqualTo("0.42\u00a0%\u00a0a\u00a0year");
    assertThat(Figures.of(Metric.COST_DISCOUNTED, 2130, "EUR")).isEqualTo("2\u00a0130\u00a0EUR");
  }

  @Test
  void terminalTableHasARowForEachRegime() {
    Summary summary = Summary.of(InventedHistories.comparison(20, 5));
    assertThat(TerminalTable.of(summary))
        .contains("leave alone", "top", "leaf m\u00b2", "cost EUR");
  }
}
