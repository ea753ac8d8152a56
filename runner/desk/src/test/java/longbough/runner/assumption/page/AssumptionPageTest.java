package longbough.runner.assumption.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.AssumptionTrial;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.Preference;
import longbough.runner.assumption.Shift;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Metric;
import longbough.shared.quantity.Range;
import longbough.shared.source.Basis;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;

/** Each of the ten heaviest shows who stands behind it, on the terminal and on the page. */
class AssumptionPageTest {
  private static final List<Basis> BASES = List.of(Basis.values());

  @Test
  void eachOfTheTenHeaviestShowsItsSourceOrAFlag() {
    List<String> table = AssumptionLines.table(all(12));
    String page = AssumptionPage.of(all(12), "test");
    assertThat(table).hasSize(1 + 12);
    for (int place = 0; place < 12; place++) {
      Basis basis = BASES.get(place % BASES.size());
      String line = table.get(1 + place);
      assertThat(line).contains("number.n" + (10 + place), basis.label());
      boolean flag = place < Assumptions.LOOKED_AT && basis != Basis.PUBLISHED;
      assertThat(line.contains("flag: " + basis.label())).as(line).isEqualTo(flag);
    }
    for (Basis basis : BASES) {
      if (basis == Basis.PUBLISHED) {
        assertThat(page).contains("published: Ryan M.G. 1991</td>");
      } else {
        assertThat(page).contains("<strong>flag:\u00a0" + basis.label() + "</strong>");
      }
    }
    assertThat(page.split("why number n", -1)).hasSize(1 + Assumptions.LOOKED_AT);
  }

  @Test
  void saysWhoWasPlayedThroughAllFutures() {
    assertThat(String.join(" ", Sentences.reading(all(12))))
        .contains("11 of 12 were played through all 24");
  }

  /** Parameters of falling weight and of every basis in turn; the last was left early. */
  private static Assumptions all(int count) {
    SimulationInput input =
        InventedHistories.input(InventedHistories.regimes(3).subList(0, 2), 24, 3);
    List<Preference> preferred =
        AssumptionTrial.METRICS.stream()
            .map(metric -> new Preference(metric, 0, 10, 1, true))
            .toList();
    List<Assumption> all = new ArrayList<>();
    for (int place = 0; place < count; place++) {
      Basis basis = BASES.get(place % BASES.size());
      String name = "n" + (10 + place);
      Sourced row =
          new Sourced(
              "number." + name,
              1,
              "m",
              new Range(0, 2),
              false,
              basis,
              "ryan1991",
              "why number " + name);
      double change = 2 - 0.1 * place;
      Shift shift =
          new Shift(
              Metric.LEAF_AREA_MEAN_M2,
              0,
              1,
              1,
              1,
              1,
              1 + change,
              0,
              0,
              change,
              0,
              0,
              true,
              false,
              false);
      all.add(new Assumption(row, List.of(shift), place < count - 1 ? 24 : 8, ""));
    }
    return new Assumptions(input, preferred, all);
  }
}
