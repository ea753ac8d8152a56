package longbough.runner.update.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import longbough.runner.compare.Band;
import longbough.runner.table.TidyFile;
import longbough.runner.update.ForecastFigure;
import longbough.runner.update.Outlook;
import longbough.runner.update.Tried;
import longbough.runner.update.Updated;

/** The tables of an update as files. */
final class UpdateFiles {

  private UpdateFiles() {}

  static void write(Updated updated, Path folder) throws IOException {
    measured(updated, folder);
    weights(updated, folder);
    forecast(updated, folder);
    verdict(updated, folder);
  }

  private static void measured(Updated updated, Path folder) throws IOException {
    List<String> columns =
        List.of(
            "year",
            "figure",
            "unit",
            "measured",
            "foretold_p05",
            "foretold_p50",
            "foretold_p95",
            "p_value");
    try (TidyFile file = open(folder, "measured.csv", columns)) {
      for (Outlook.Figure figure : updated.outlook().figures()) {
        file.add(figure.measured().year())
            .add(figure.measured().quantity().label())
            .add(figure.measured().quantity().unit())
            .add(figure.measured().value())
            .add(figure.low())
            .add(figure.middle())
            .add(figure.high())
            .add(figure.pValue())
            .endRow();
      }
    }
  }

  private static void weights(Updated updated, Path folder) throws IOException {
    List<String> columns = List.of("future", "log_likelihood", "weight", "carried");
    try (TidyFile file = open(folder, "weights.csv", columns)) {
      for (Tried tried : updated.tried()) {
        file.add(tried.future())
            .add(tried.logLikelihood())
            .add(tried.weight())
            .add(tried.carried())
            .endRow();
      }
    }
  }

  private static void forecast(Updated updated, Path folder) throws IOException {
    List<String> columns =
        List.of(
            "regime",
            "figure",
            "year",
            "before_p05",
            "before_p50",
            "before_p95",
            "after_p05",
            "after_p50",
            "after_p95");
    try (TidyFile file = open(folder, "forecast.csv", columns)) {
      for (int regime = 0; regime < updated.input().regimes().size(); regime++) {
        for (ForecastFigure figure : ForecastFigure.values()) {
          Band before = updated.before(figure, regime);
          Band after = updated.after(figure, regime);
          for (int year = 0; year <= updated.input().years(); year++) {
            file.add(updated.regime(regime)).add(figure.word()).add(year);
            band(file, before, year, true);
            band(file, after, year, updated.narrowed());
            file.endRow();
          }
        }
      }
    }
  }

  private static void band(TidyFile file, Band band, int year, boolean there) {
    file.add(there ? band.low()[year] : Double.NaN)
        .add(there ? band.median()[year] : Double.NaN)
        .add(there ? band.high()[year] : Double.NaN);
  }

  private static void verdict(Updated updated, Path folder) throws IOException {
    List<String> columns =
        List.of(
            "regime",
            "against",
            "figure",
            "before_share_better",
            "before_share_worse",
            "before_mean_difference",
            "after_share_better",
            "after_share_worse",
            "after_mean_difference");
    try (TidyFile file = open(folder, "verdict.csv", columns)) {
      for (Updated.Turn turn : updated.turns()) {
        boolean now = updated.narrowed();
        file.add(updated.regime(turn.regime()))
            .add(updated.regime(0))
            .add(turn.metric().word())
            .add(turn.before().better())
            .add(turn.before().worse())
            .add(turn.before().difference())
            .add(now ? turn.after().better() : Double.NaN)
            .add(now ? turn.after().worse() : Double.NaN)
            .add(now ? turn.after().difference() : Double.NaN)
            .endRow();
      }
    }
  }

  private static TidyFile open(Path folder, String name, List<String> columns) throws IOException {
    return new TidyFile(
        Files.newBufferedWriter(folder.resolve(name), StandardCharsets.UTF_8), columns);
  }
}
