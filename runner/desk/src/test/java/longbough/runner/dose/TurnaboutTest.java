package longbough.runner.dose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longbough.model.state.CauseOfDeath;
import longbough.runner.compare.InventedHistories;
import org.junit.jupiter.api.Test;

class TurnaboutTest {

  @Test
  void worseByDoseAndByDryYearsIsNoTurnabout() {
    assertThat(Turnabout.of(table(new int[][] {{9, 8}, {9, 7}, {8, 6}}, 0, 3))).isEmpty();
  }

  @Test
  void moreLivesByDoseOrDryYearsAreTold() {
    List<Turnabout> found = Turnabout.of(table(new int[][] {{8, 9}, {8, 7}, {8, 8}}, 0, 3));
    assertThat(found).hasSize(2).noneMatch(Turnabout::byWind);
    assertThat(found.get(0).sentence())
        .contains("left alone, no dry years: alive in 8 futures")
        .contains("50 % thinned, no dry years: in 9")
        .doesNotContain("wind");
    assertThat(found.get(1).harder().dry()).isEqualTo(DryCase.TWO_AFTER);
  }

  @Test
  void windIsNamedWhereItExplainsTheLives() {
    List<Turnabout> found = Turnabout.of(table(new int[][] {{8, 9}, {8, 8}, {8, 8}}, 1, 3));
    assertThat(found).singleElement().matches(Turnabout::byWind);
    assertThat(found.get(0).sentence()).contains("catches less wind");
  }

  @Test
  void soonerFullAfterMoreIsTold() {
    List<Turnabout> found = Turnabout.of(table(new int[][] {{9, 8}, {9, 7}, {8, 6}}, 0, 0.5));
    assertThat(found).hasSize(3).allMatch(Turnabout::ofYears);
  }

  /** Ten futures; of the trees left alone so many are blown down, of the thinned ones none. */
  private static DoseTable table(int[][] alive, int blownDown, double yearsAtHalf) {
    List<DoseCell> cells = new ArrayList<>();
    for (DryCase dry : DryCase.values()) {
      int[] row = alive[dry.ordinal()];
      Map<CauseOfDeath, Integer> blown =
          row[0] < row[1] ? Map.of(CauseOfDeath.UPROOTED, blownDown) : Map.of();
      cells.add(new DoseCell(0, dry, 10, row[0], blown, 1, 10, 10));
      cells.add(new DoseCell(0.5, dry, 10, row[1], Map.of(), yearsAtHalf, 8, 10));
    }
    return new DoseTable(
        InventedHistories.input(InventedHistories.regimes(15), 10, 15), List.of(0.0, 0.5), cells);
  }
}
