package longbough.runner.assumption.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.Map;
import longbough.model.SimulationInput;
import longbough.model.pruning.Regime;
import longbough.runner.assumption.Assumptions;
import longbough.runner.chart.AssumptionChart;
import longbough.runner.drawing.scene.SceneFiles;
import longbough.runner.table.AssumptionFile;
import longbough.runner.table.Fingerprint;
import longbough.runner.table.Manifest;
import longbough.runner.table.OutputFolder;

/** Writes tables, chart and page into a prepared folder; the manifest comes last. */
public final class AssumptionPublication {
  public static final String REPORT = "report.html";

  private AssumptionPublication() {}

  /** Writes everything; the scenario's file name and hash go to the manifest. */
  public static void write(
      Assumptions all, String scenario, String scenarioHash, String version, OutputFolder output)
      throws IOException {
    SimulationInput input = all.input();
    AssumptionFile.write(all, output.folder());
    SceneFiles.write(AssumptionChart.of(all), output.folder("charts"), "assumptions");
    Files.writeString(
        output.folder().resolve(REPORT), AssumptionPage.of(all, version), StandardCharsets.UTF_8);
    Map<String, Object> manifest = new LinkedHashMap<>();
    manifest.put("version", version);
    manifest.put("command", "assumptions");
    manifest.put("scenario", scenario);
    manifest.put("scenario_hash", scenarioHash);
    manifest.put("parameter_hash", Fingerprint.of(input.parameters()));
    manifest.put("seed", input.seed());
    manifest.put("members", input.members());
    manifest.put("years", input.years());
    manifest.put("regimes", input.regimes().stream().map(Regime::name).toList());
    Manifest.write(manifest, output.folder());
  }
}
