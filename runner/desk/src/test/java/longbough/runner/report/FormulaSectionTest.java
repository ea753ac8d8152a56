package longbough.runner.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import longbough.model.history.History;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Summary;
import longbough.runner.table.Provenance;
import longbough.runner.verdict.LimitWarnings;
import org.junit.jupiter.api.Test;

/** Published formulas beside the model's own figure: d/D 0.6 with a tenth open, by hand. */
class FormulaSectionTest {

  // 0.6^4 = 0.13, 0.6^3 = 0.216, 0.216 + 0.1 * 0.784 = 0.29 (strength checks S03 and S06).
  @Test
  void theFormulasAreThoseOfTheirSources() {
    Comparison comparison = InventedHistories.comparison(20, 12);
    for (var regime : comparison.regimes()) {
      History history = regime.medianFuture();
      history.snapshots().clear();
    }
    comparison.regimes().get(0).medianFuture().snapshots().put(10, hollow());
    String section = section(comparison);
    assertThat(section)
        .contains("36\u00a0%", "41\u00a0%", "13\u00a0%", "22\u00a0%", "29\u00a0%", "2\u00a0m")
        .contains("sound in every year drawn", "limit of safety");
  }

  @Test
  void nothingIsSaidOfSoundTrunks() {
    Comparison comparison = InventedHistories.comparison(20, 12);
    comparison.regimes().forEach(regime -> regime.medianFuture().snapshots().clear());
    assertThat(section(comparison)).doesNotContain("published formulas");
  }

  private static String section(Comparison comparison) {
    Provenance provenance =
        new Provenance("0.1", "a.yaml", "aaaa", "bbbb", LimitWarnings.of(comparison));
    ReportInput input =
        new ReportInput(
            Summary.of(comparison), "", List.of(), Optional.empty(), List.of(), provenance);
    return PageFrame.of("x", "", page -> new FormulaSection().write(page, input));
  }

  private static TreeState hollow() {
    TreeState state = new TreeState();
    state.vitality.worstStation = 4;
    state.vitality.worstDecayAreaFraction = 0.36;
    state.vitality.worstStrengthLoss = 0.41;
    for (int k = 0; k < Sections.SECTORS / 10; k++) {
      state.sections.open(4, k, 0.1);
    }
    return state;
  }
}
