package longbough.runner.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.state.CauseOfDeath;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;
import longbough.runner.survival.DeathsByCause;
import longbough.runner.survival.RegimeSurvival;

/**
 * {@code survival.csv}: one row for each regime and year: the share of futures in which the tree is
 * alive, with its band, and the shares that each cause has ended.
 */
final class SurvivalFile {
  private SurvivalFile() {}

  static List<String> columns() {
    List<String> columns =
        new ArrayList<>(
            List.of("regime", "year", "alive", "alive_error", "alive_low", "alive_high"));
    for (CauseOfDeath cause : DeathsByCause.all()) {
      columns.add("died_" + cause.name().toLowerCase(Locale.ROOT));
    }
    return columns;
  }

  static void write(Comparison comparison, TidyShelf shelf) throws IOException {
    try (TidyTable file = shelf.open("survival", columns())) {
      for (RegimeResult result : comparison.regimes()) {
        RegimeSurvival survival = RegimeSurvival.of(result, comparison.years());
        for (int year = 0; year <= comparison.years(); year++) {
          file.add(result.name()).add(year).add(survival.alive(year));
          file.add(survival.standardError(year)).add(survival.low(year)).add(survival.high(year));
          Map<CauseOfDeath, Double> causes = survival.causes(year);
          for (CauseOfDeath cause : DeathsByCause.all()) {
            file.add(causes.get(cause));
          }
          file.endRow();
        }
      }
    }
  }
}
