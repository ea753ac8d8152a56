package longbough.runner.limit.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import longbough.runner.chart.LimitChart;
import longbough.runner.chart.ResponseChart;
import longbough.runner.drawing.scene.SceneFiles;
import longbough.runner.limit.LimitTable;
import longbough.runner.limit.Way;
import longbough.runner.table.Fingerprint;
import longbough.runner.table.LimitFile;
import longbough.runner.table.Manifest;
import longbough.runner.table.OutputFolder;

/** Writes tables, charts and page into a prepared folder; the manifest comes last. */
public final class LimitPublication {
  public static final String REPORT = "report.html";

  private LimitPublication() {}

  /**
   * Writes everything.
   *
   * @param scenario name of the scenario, without folder and ending
   * @param dryYears name of the case of dry years
   */
  public static void write(
      String scenario, String dryYears, LimitTable table, String version, OutputFolder output)
      throws IOException {
    LimitFile.write(table, output.folder());
    Path charts = output.folder("charts");
    SceneFiles.write(LimitChart.of(table), charts, "limits");
    for (Way way : table.ways()) {
      String name = way.word().replace('_', '-');
      SceneFiles.write(ResponseChart.of(table, way), charts, name);
    }
    Files.writeString(
        output.folder().resolve(REPORT), LimitPage.of(table, version), StandardCharsets.UTF_8);
    Map<String, Object> manifest = new LinkedHashMap<>();
    manifest.put("version", version);
    manifest.put("command", "limit");
    manifest.put("scenario", scenario);
    manifest.put("parameter_hash", Fingerprint.of(table.input().parameters()));
    manifest.put("seed", table.input().seed());
    manifest.put("members", table.input().members());
    manifest.put("years", table.input().years());
    manifest.put("dry_years", dryYears);
    manifest.put("share", Double.toString(table.share()));
    Manifest.write(manifest, output.folder());
  }
}
