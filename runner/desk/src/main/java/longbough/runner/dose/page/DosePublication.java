package longbough.runner.dose.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.model.SimulationInput;
import longbough.runner.chart.DoseChart;
import longbough.runner.dose.DoseTable;
import longbough.runner.drawing.scene.SceneFiles;
import longbough.runner.table.DoseFile;
import longbough.runner.table.Fingerprint;
import longbough.runner.table.Manifest;
import longbough.runner.table.OutputFolder;

/** Writes tables, charts and page into a prepared folder; the manifest comes last. */
public final class DosePublication {
  public static final String REPORT = "report.html";

  private DosePublication() {}

  /**
   * Writes everything.
   *
   * @param scenarios name of each tree's scenario, without folder and ending
   * @param tables one a tree
   */
  public static void write(
      List<String> scenarios, List<DoseTable> tables, String version, OutputFolder output)
      throws IOException {
    DoseFile.write(scenarios, tables, output.folder());
    Path charts = output.folder("charts");
    for (int tree = 0; tree < tables.size(); tree++) {
      SceneFiles.write(DoseChart.of(tables.get(tree)), charts, "dose-" + (tree + 1));
    }
    Files.writeString(
        output.folder().resolve(REPORT), DosePage.of(tables, version), StandardCharsets.UTF_8);
    SimulationInput first = tables.get(0).input();
    Map<String, Object> manifest = new LinkedHashMap<>();
    manifest.put("version", version);
    manifest.put("command", "dose");
    manifest.put("scenarios", scenarios);
    manifest.put(
        "parameter_hashes",
        tables.stream().map(table -> Fingerprint.of(table.input().parameters())).toList());
    manifest.put("seeds", tables.stream().map(table -> table.input().seed()).toList());
    manifest.put("members", first.members());
    manifest.put("years", first.years());
    Manifest.write(manifest, output.folder());
  }
}
