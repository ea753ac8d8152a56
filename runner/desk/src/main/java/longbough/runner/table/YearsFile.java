package longbough.runner.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;

/** {@code years.csv}: one row for each regime, future and year; year 0 is the tree as measured. */
final class YearsFile {
  private static final YearColumn[] MEASURES = YearColumn.values();

  private YearsFile() {}

  static List<String> columns() {
    List<String> columns = new ArrayList<>(List.of("regime", "member", "year"));
    for (YearColumn measure : MEASURES) {
      columns.add(measure.column());
    }
    return columns;
  }

  static void write(Comparison comparison, TidyShelf shelf) throws IOException {
    try (TidyTable file = shelf.open("years", columns())) {
      for (RegimeResult result : comparison.regimes()) {
        for (int member = 0; member < result.members().length; member++) {
          write(file, result.name(), member, result.members()[member]);
        }
      }
    }
  }

  private static void write(TidyTable file, String regime, int member, History history) {
    for (int year = 0; year <= history.years(); year++) {
      file.add(regime).add(member).add(year);
      for (YearColumn measure : MEASURES) {
        file.add(history.value(measure, year));
      }
      file.endRow();
    }
  }
}
