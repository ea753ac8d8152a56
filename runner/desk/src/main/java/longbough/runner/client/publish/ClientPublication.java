package longbough.runner.client.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import longbough.runner.assumption.Assumptions;
import longbough.runner.client.file.Client;
import longbough.runner.client.page.ClientInput;
import longbough.runner.client.page.ClientReport;
import longbough.runner.client.paper.Pdf;
import longbough.runner.client.picture.ClientCharts;
import longbough.runner.client.picture.PlanStrips;
import longbough.runner.compare.Summary;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.SvgWriter;
import longbough.runner.report.Picture;
import longbough.runner.table.Manifest;
import longbough.runner.table.OutputFolder;
import longbough.runner.table.Provenance;
import longbough.runner.table.TidyFiles;

/** Writes everything of one client report into a prepared folder; the manifest comes last. */
public final class ClientPublication {
  public static final String PAGE = "client-report.html";
  public static final String PAPER = "client-report.pdf";

  private ClientPublication() {}

  public static void write(
      Client client,
      Summary summary,
      Optional<Assumptions> leaning,
      Provenance provenance,
      OutputFolder output)
      throws IOException {
    ClientInput input =
        new ClientInput(
            client,
            summary,
            leaning,
            strips(summary, client),
            ClientCharts.of(summary.comparison(), client.words()),
            provenance,
            false);
    Files.writeString(
        output.folder().resolve(PAGE), ClientReport.screen(input), StandardCharsets.UTF_8);
    Files.write(output.folder().resolve(PAPER), Pdf.of(ClientReport.paper(input)));
    TidyFiles.write(summary.comparison(), summary, output.folder());
    Manifest.write(summary.comparison(), provenance, output.folder());
  }

  private static List<Picture> strips(Summary summary, Client client) {
    return PlanStrips.of(summary.comparison(), client.words()).stream()
        .map(ClientPublication::picture)
        .toList();
  }

  private static Picture picture(Scene scene) {
    return new Picture(scene.title(), SvgWriter.write(scene), scene.description());
  }
}
