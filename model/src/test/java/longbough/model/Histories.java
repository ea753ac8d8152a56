package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import longbough.model.history.History;
import longbough.model.history.VisitRow;
import longbough.model.history.YearColumn;

/** Compares histories to the bit. */
final class Histories {

  private Histories() {}

  static void assertSame(History one, History two) {
    assertThat(one.years()).isEqualTo(two.years());
    for (int year = 0; year <= one.years(); year++) {
      for (YearColumn column : YearColumn.values()) {
        assertThat(Double.doubleToRawLongBits(one.value(column, year)))
            .as(column + " in year " + year)
            .isEqualTo(Double.doubleToRawLongBits(two.value(column, year)));
      }
    }
    assertThat(one.deathYear()).isEqualTo(two.deathYear());
    assertThat(one.cause()).isEqualTo(two.cause());
    assertThat(one.wounds()).containsExactlyElementsOf(two.wounds());
    assertThat(one.visits())
        .usingElementComparator(Histories::compare)
        .containsExactlyElementsOf(two.visits());
  }

  private static int compare(VisitRow one, VisitRow two) {
    boolean cuts = java.util.Arrays.equals(one.cutsByClass(), two.cutsByClass());
    return cuts && plain(one).equals(plain(two)) ? 0 : 1;
  }

  private static VisitRow plain(VisitRow row) {
    return new VisitRow(
        row.year(),
        row.season(),
        row.operation(),
        row.foliageRemovedFraction(),
        row.cuts(),
        row.largestCutM(),
        row.woundM2(),
        row.crewHours(),
        row.cost(),
        null,
        row.warnings());
  }
}
