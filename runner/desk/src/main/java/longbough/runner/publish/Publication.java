package longbough.runner.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import longbough.runner.chart.CauseBars;
import longbough.runner.chart.ChartFiles;
import longbough.runner.chart.ChartSet;
import longbough.runner.chart.LineChart;
import longbough.runner.compare.Summary;
import longbough.runner.report.Picture;
import longbough.runner.report.Report;
import longbough.runner.report.ReportInput;
import longbough.runner.table.Manifest;
import longbough.runner.table.OutputFolder;
import longbough.runner.table.Provenance;
import longbough.runner.table.TidyFiles;

/** Writes everything of one comparison into a prepared folder; the manifest comes last. */
public final class Publication {
  public static final String REPORT = "report.html";

  private Publication() {}

  public static void write(
      Summary summary, String about, Provenance provenance, OutputFolder output)
      throws IOException {
    // Tables, charts and drawings need nothing of each other, so they are made side by side.
    CompletableFuture<Void> tables =
        aside(() -> TidyFiles.write(summary.comparison(), summary, output.folder()));
    List<LineChart> charts = ChartSet.of(summary.comparison());
    Path chartFolder = output.folder("charts");
    CompletableFuture<Void> pictures =
        aside(
            () -> {
              ChartFiles.write(charts, chartFolder);
              ChartFiles.write(CauseBars.of(summary.comparison()), chartFolder);
            });
    Path drawingFolder = output.folder("drawings");
    Optional<Picture> overview = DrawingPictures.overview(summary.comparison(), drawingFolder);
    List<Picture> drawings = DrawingPictures.write(summary.comparison(), drawingFolder);
    String report =
        Report.of(new ReportInput(summary, about, charts, overview, drawings, provenance));
    Files.writeString(output.folder().resolve(REPORT), report, StandardCharsets.UTF_8);
    finished(tables);
    finished(pictures);
    Manifest.write(summary.comparison(), provenance, output.folder());
  }

  private static void finished(CompletableFuture<Void> work) throws IOException {
    try {
      work.join();
    } catch (CompletionException failed) {
      if (failed.getCause() instanceof UncheckedIOException io) {
        throw io.getCause();
      }
      throw failed;
    }
  }

  private interface Writing {
    void run() throws IOException;
  }

  private static CompletableFuture<Void> aside(Writing writing) {
    return CompletableFuture.runAsync(
        () -> {
          try {
            writing.run();
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }
}
