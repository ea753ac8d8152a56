package longbough.runner.batch.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import longbough.runner.batch.Batch;
import longbough.runner.chart.TroubleChart;
import longbough.runner.drawing.scene.SceneFiles;
import longbough.runner.table.Fingerprint;
import longbough.runner.table.Manifest;
import longbough.runner.table.OutputFolder;

/** Writes tables, chart and page into a prepared folder; the manifest comes last. */
public final class BatchPublication {
  public static final String REPORT = "report.html";

  private BatchPublication() {}

  /**
   * Writes everything.
   *
   * @param name what the batch is called
   */
  public static void write(Batch batch, String name, String version, OutputFolder output)
      throws IOException {
    BatchFiles.write(batch, output.folder());
    if (!batch.ranked().isEmpty()) {
      SceneFiles.write(TroubleChart.of(batch), output.folder("charts"), "trouble");
    }
    Files.writeString(
        output.folder().resolve(REPORT),
        BatchPage.of(batch, name, version),
        StandardCharsets.UTF_8);
    Map<String, Object> manifest = new LinkedHashMap<>();
    manifest.put("version", version);
    manifest.put("command", "batch");
    manifest.put("trees", batch.ranked().size());
    manifest.put("left_out", batch.notPlayed().size());
    manifest.put("sources", batch.ranked().stream().map(tree -> tree.tree().source()).toList());
    manifest.put(
        "parameter_hashes",
        List.copyOf(
            new TreeSet<>(
                batch.ranked().stream()
                    .map(tree -> Fingerprint.of(tree.tree().input().parameters()))
                    .toList())));
    manifest.put("seeds", batch.ranked().stream().map(tree -> tree.tree().input().seed()).toList());
    Manifest.write(manifest, output.folder());
  }
}
