package longbough.runner.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import org.junit.jupiter.api.Test;

class MedianMemberTest {

  @Test
  void liesInTheMiddleOfAllRegimes() {
    History[] members = {leafy(9), leafy(2), leafy(5), leafy(7), leafy(3)};
    assertThat(MedianMember.of(List.<History[]>of(members), 1)).isEqualTo(2);
    History[] other = {leafy(4), leafy(1), leafy(9), leafy(5), leafy(8)};
    assertThat(MedianMember.of(List.<History[]>of(other, other, members), 1)).isEqualTo(3);
  }

  @Test
  void ofEqualFuturesTheFirstIsTaken() {
    History[] members = {leafy(5), leafy(5), leafy(5)};
    assertThat(MedianMember.of(List.<History[]>of(members), 1)).isZero();
  }

  @Test
  void aDeadTreeHasNoPlaceInTheMiddle() {
    History dead = new History(1);
    History[] members = {dead, leafy(5), leafy(6), leafy(7)};
    assertThat(MedianMember.of(List.<History[]>of(members), 1)).isNotZero();
  }

  @Test
  void drawnYearsAreWithinTheRun() {
    assertThat(ComparisonRun.drawnYears(30)).containsExactly(0, 1, 10, 30);
    assertThat(ComparisonRun.drawnYears(1)).containsExactly(0, 1);
  }

  private static History leafy(double leafAreaM2) {
    History history = new History(1);
    for (int year = 0; year <= 1; year++) {
      history.set(YearColumn.ALIVE, year, 1);
      history.set(YearColumn.LEAF_AREA_M2, year, leafAreaM2);
    }
    return history;
  }
}
