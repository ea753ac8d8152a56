package longbough.runner.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import longbough.model.SimulationInput;
import longbough.runner.client.file.Client;
import longbough.runner.client.file.ClientReader;
import longbough.runner.client.page.ClientInput;
import longbough.runner.client.page.ClientReport;
import longbough.runner.client.paper.Pdf;
import longbough.runner.client.picture.ClientCharts;
import longbough.runner.client.picture.PlanStrips;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.ComparisonRun;
import longbough.runner.compare.EnginePlayer;
import longbough.runner.compare.Summary;
import longbough.runner.drawing.scene.SvgWriter;
import longbough.runner.report.Picture;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import longbough.runner.table.Provenance;
import longbough.runner.verdict.LimitWarnings;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The report on paper, of real trees that are played for a few futures. */
class PdfTest {
  private static final Path SCENARIOS = Path.of("../../scenarios");

  private static String lime;
  private static byte[] limePdf;

  @BeforeAll
  static void playALime() throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    lime = page("canal-side-lime", Optional.of("client/canal-side-lime.yaml"));
    limePdf = Pdf.of(lime);
  }

  @Test
  void aValidatorFindsNothingAgainstAccessibility() throws Exception {
    assertThat(failures(limePdf)).isEmpty();
    assertThat(failures(Pdf.of(page("hillside-spruce", Optional.empty())))).isEmpty();
  }

  @Test
  void theValidatorWouldFindAPictureWithoutWords() throws Exception {
    byte[] mute = Pdf.of(lime.replaceAll("<desc[^>]*>[^<]*</desc>", "<desc></desc>"));
    assertThat(failures(mute)).isNotEmpty();
  }

  @Test
  void everyPictureHasItsWordsAndEveryHeadingItsTag() throws IOException {
    try (PDDocument document = Loader.loadPDF(limePdf)) {
      List<PDStructureElement> all = new ArrayList<>();
      elements(document.getDocumentCatalog().getStructureTreeRoot(), all);
      List<PDStructureElement> figures =
          all.stream().filter(one -> one.getStructureType().equals("Figure")).toList();
      // One logo, four plans, two charts and that of the cost.
      assertThat(figures).hasSize(8);
      assertThat(figures).allSatisfy(one -> assertThat(one.getAlternateDescription()).isNotBlank());
      assertThat(all.stream().filter(one -> one.getStructureType().equals("H1"))).hasSize(1);
      assertThat(all.stream().filter(one -> one.getStructureType().equals("H2"))).hasSize(10);
      assertThat(all.stream().filter(one -> one.getStructureType().equals("TH")))
          .hasSizeGreaterThan(20);
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(document.getDocumentInformation().getTitle())
          .isEqualTo("The lime beside the boathouse");
    }
  }

  @Test
  void itHasThreeToSixPagesWithNumbersAndOnlyOurFonts() throws IOException {
    try (PDDocument document = Loader.loadPDF(limePdf)) {
      int pages = document.getNumberOfPages();
      assertThat(pages).isBetween(3, 6);
      TreeSet<String> fonts = new TreeSet<>();
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          fonts.add(page.getResources().getFont(name).getName().replaceFirst("^[A-Z]{6}\\+", ""));
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
      assertThat(fonts).containsExactly("OpenSans", "OpenSans-Semibold");
      String text = new PDFTextStripper().getText(document);
      assertThat(text)
          .contains("Page 1 of " + pages, "Page " + pages + " of " + pages)
          .contains("The lime beside the boathouse · 2026-114")
          .contains("never a safety clearance", "Boathouse association", "A. Example");
    }
  }

  @Test
  void samePageGivesTheSameBytes() throws IOException {
    assertThat(Pdf.of(lime)).isEqualTo(limePdf);
  }

  private static String page(String scenario, Optional<String> clientFile) throws Exception {
    SimulationInput full =
        ScenarioResolver.resolve(ScenarioReader.read(SCENARIOS.resolve(scenario + ".yaml")));
    SimulationInput input = full.playing(full.regimes(), full.years(), 6, full.seed());
    Comparison comparison =
        ComparisonRun.play(
            input, new EnginePlayer(), 2, done -> {}, PlanStrips.years(input.years()));
    List<String> plans = input.regimes().stream().map(plan -> plan.name()).toList();
    Client client =
        clientFile
            .map(file -> ClientReader.read(SCENARIOS.resolve(file), plans))
            .orElseGet(Client::nobody);
    List<Picture> strips =
        PlanStrips.of(comparison, client.words()).stream()
            .map(scene -> new Picture(scene.title(), SvgWriter.write(scene), scene.description()))
            .toList();
    return ClientReport.paper(
        new ClientInput(
            client,
            Summary.of(comparison),
            Optional.empty(),
            strips,
            ClientCharts.of(comparison, client.words()),
            new Provenance("0.1", "a.yaml", "aaaa", "bbbb", LimitWarnings.of(comparison)),
            false));
  }

  private static List<String> failures(byte[] pdf) throws Exception {
    PDFAFlavour flavour = PDFAFlavour.PDFUA_1;
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      assertThat(result.getTotalAssertions()).isPositive();
      return result.getTestAssertions().stream()
          .filter(one -> one.getStatus() == TestAssertion.Status.FAILED)
          .map(one -> one.getRuleId().getClause() + " " + one.getMessage() + one.getLocation())
          .distinct()
          .limit(20)
          .toList();
    }
  }

  private static void elements(PDStructureNode node, List<PDStructureElement> onto) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        onto.add(element);
        elements(element, onto);
      }
    }
  }
}
