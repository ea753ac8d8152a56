package longbough.runner.gentler.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.runner.chart.PlanChart;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.SceneFiles;
import longbough.runner.gentler.Advice;
import longbough.runner.table.Fingerprint;
import longbough.runner.table.Manifest;
import longbough.runner.table.OutputFolder;
import longbough.runner.table.PlanFile;

/** Writes tables, pictures and page into a prepared folder; the manifest comes last. */
public final class AdvicePublication {
  public static final String REPORT = "report.html";

  private AdvicePublication() {}

  /**
   * Writes everything.
   *
   * @param scenario name of the scenario, without folder and ending
   */
  public static void write(String scenario, Advice advice, String version, OutputFolder output)
      throws IOException {
    List<String> schedules =
        advice.all().stream()
            .map(plan -> AdviceWords.schedule(plan.regime(), advice.input().years()))
            .toList();
    PlanFile.write(advice, schedules, output.folder());
    Path charts = output.folder("charts");
    SceneFiles.write(PlanChart.of(advice), charts, "plans");
    Scene trees = PlanTrees.of(advice);
    SceneFiles.write(trees, output.folder("drawings"), "plans");
    Files.writeString(
        output.folder().resolve(REPORT),
        AdvicePage.of(advice, trees, version),
        StandardCharsets.UTF_8);
    Map<String, Object> manifest = new LinkedHashMap<>();
    manifest.put("version", version);
    manifest.put("command", "gentler");
    manifest.put("scenario", scenario);
    manifest.put("parameter_hash", Fingerprint.of(advice.input().parameters()));
    manifest.put("seed", advice.input().seed());
    manifest.put("members", advice.input().members());
    manifest.put("years", advice.input().years());
    manifest.put("plans_tried", advice.tried());
    Manifest.write(manifest, output.folder());
  }
}
