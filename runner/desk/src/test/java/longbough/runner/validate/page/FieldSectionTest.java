package longbough.runner.validate.page;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import longbough.runner.validate.Standing;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Finding;
import longbough.runner.validate.experiment.Reading;
import longbough.runner.validate.field.FieldReport;
import longbough.runner.validate.field.FieldText;
import longbough.runner.validate.field.InventedData;
import longbough.runner.validate.field.OpenData;
import longbough.runner.validate.table.ValidationFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page and the files with invented measurements. */
class FieldSectionTest {
  private static final String RESERVES =
      "tree,species,organ,season,nsc_percent_dry_mass,height_m,sla_source_unit,stem_wood_density_g_cm3\n"
          + "1,Acer rubrum,branches,S1,2.1,19,13,0.5\n"
          + "2,Acer rubrum,branches,S1,4.1,19,13,0.5\n"
          + "3,Acer rubrum,branches,S1,6.1,,,\n";

  @TempDir Path folder;

  @Test
  void everyChartHasWordsAndNothingIsLoaded() throws Exception {
    FieldReport field = report();
    String page = ValidationPage.of(rows(), field, "1.0");
    Document document = parsed(page);
    NodeList pictures = document.getElementsByTagName("svg");
    int charts = 0;
    for (int i = 0; i < pictures.getLength(); i++) {
      Element picture = (Element) pictures.item(i);
      if (picture.hasAttribute("aria-labelledby")) {
        for (String id : picture.getAttribute("aria-labelledby").split(" ")) {
          assertThat(page.split("id=\"" + id + "\"", -1)).as(id).hasSize(2);
        }
        assertThat(first(picture, "title")).isNotBlank();
        assertThat(first(picture, "desc")).isNotBlank();
        charts++;
      }
    }
    // Four of the lime, one of the reserves.
    assertThat(charts).isEqualTo(5);
    assertThat(page).doesNotContain("src=", "href=", "url(", "@import", "<script", "NaN");
    assertThat(page)
        .contains("No sapwood: the folder of open measurements has no sapwood-depth.csv");
    assertThat(page)
        .contains("Branches, early in the season: median 4.10 of 3", "model 5.00, within");
  }

  @Test
  void withoutDataThePageSaysWhatIsLeftOut() {
    FieldReport none = FieldReport.of(Optional.empty(), List.of(), done -> {});
    assertThat(none.empty()).isTrue();
    assertThat(ValidationPage.of(rows(), none, "1.0"))
        .contains("is left out: no folder with urban-trees.csv was found");
    assertThat(String.join("\n", FieldText.lines(none))).contains("is left out");
  }

  @Test
  void filesHoldOneFactARow() throws IOException {
    var files = ValidationFiles.of(rows(), report());
    assertThat(files.keySet()).containsExactlyElementsOf(ValidationFiles.NAMES);
    List<NamedCsvRecord> checks = read(files.get(ValidationFiles.CHECKS));
    assertThat(checks).hasSize(1);
    assertThat(checks.get(0).getField("id")).isEqualTo("F11");
    assertThat(checks.get(0).getField("verdict")).isEqualTo("miss");
    assertThat(checks.get(0).getField("why")).isEqualTo("'=1+1, \"why\"");
    List<NamedCsvRecord> sizes = read(files.get(ValidationFiles.SIZES));
    assertThat(sizes).hasSize(4);
    for (NamedCsvRecord row : sizes) {
      assertThat(row.getField("species")).isEqualTo("tilia-cordata");
      assertThat(row.getField("measured")).isEqualTo("30");
      assertThat(Double.parseDouble(row.getField("share_in_95"))).isBetween(0.0, 1.0);
    }
    assertThat(read(files.get(ValidationFiles.LEAF))).hasSize(1);
    assertThat(read(files.get(ValidationFiles.SPREADS)).get(0).getField("model")).isEqualTo("5");
  }

  @Test
  void severalNumbersEachHaveAPicture() {
    List<BandPicture> pictures = BandPicture.of(rows().get(0));
    assertThat(pictures).extracting(BandPicture::got).containsExactly(5.0, 9.0);
    assertThat(pictures)
        .extracting(BandPicture::mark)
        .containsExactly(StandingMark.DISC, StandingMark.TRIANGLE);
  }

  private FieldReport report() throws IOException {
    InventedData.write(folder, InventedData.trees("Longview, WA", "Tilia cordata"));
    Files.writeString(folder.resolve("nsc-organs.csv"), RESERVES);
    return FieldReport.of(Optional.of(new OpenData(folder)), rows(), done -> {});
  }

  private static List<ValidationRow> rows() {
    Check check =
        new Check(
            "F11",
            "reserve",
            "maple",
            "none",
            "sugar",
            "4 / 7",
            Double.NaN,
            Double.NaN,
            "2 / 4",
            "6 / 8",
            "%",
            "rises",
            "read",
            "A. Paper");
    Finding finding =
        new Finding(
            "F11",
            "5.0 / 9.0 %",
            "2 / 4 to 6 / 8 %",
            false,
            true,
            "One tree.",
            List.of(new Reading(5, 2, 6), new Reading(9, 4, 8)));
    return List.of(new ValidationRow(check, Standing.MISS, finding, "=1+1, \"why\""));
  }

  private static List<NamedCsvRecord> read(String text) throws IOException {
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(text)) {
      return reader.stream().toList();
    }
  }

  private static String first(Element picture, String name) {
    return picture.getElementsByTagName(name).item(0).getTextContent();
  }

  private static Document parsed(String page) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(page)));
  }
}
