package longbough.runner.update.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.SceneFiles;
import longbough.runner.table.Fingerprint;
import longbough.runner.table.Manifest;
import longbough.runner.table.OutputFolder;
import longbough.runner.update.ForecastFigure;
import longbough.runner.update.Updated;

/** Writes tables, charts and page into a prepared folder; the manifest comes last. */
public final class UpdatePublication {
  public static final String REPORT = "report.html";

  private UpdatePublication() {}

  /**
   * Writes everything.
   *
   * @param scenario name of the scenario file
   * @param sha256 fingerprint of the scenario
   */
  public static void write(
      Updated updated, String scenario, String sha256, String version, OutputFolder output)
      throws IOException {
    UpdateFiles.write(updated, output.folder());
    Map<ForecastFigure, Scene> charts = UpdateCharts.of(updated);
    if (updated.narrowed()) {
      Path folder = output.folder("charts");
      for (Map.Entry<ForecastFigure, Scene> chart : charts.entrySet()) {
        SceneFiles.write(chart.getValue(), folder, chart.getKey().word().replace('_', '-'));
      }
    }
    Files.writeString(
        output.folder().resolve(REPORT),
        UpdatePage.of(updated, charts, version),
        StandardCharsets.UTF_8);
    Map<String, Object> manifest = new LinkedHashMap<>();
    manifest.put("version", version);
    manifest.put("command", "update");
    manifest.put("scenario", scenario);
    manifest.put("scenario_hash", sha256);
    manifest.put("measured", updated.visit().file());
    manifest.put("measured_hash", updated.visit().sha256());
    manifest.put("followed", updated.regime(updated.followed()));
    manifest.put("parameter_hash", Fingerprint.of(updated.input().parameters()));
    manifest.put("seed", updated.input().seed());
    manifest.put("members", updated.input().members());
    manifest.put("tried", updated.tried().size());
    manifest.put("carried", updated.after().count());
    manifest.put("years", updated.input().years());
    Manifest.write(manifest, output.folder());
  }
}
