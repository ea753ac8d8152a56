package longbough.runner.validate.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import longbough.runner.validate.Standing;
import longbough.runner.validate.Tally;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.ValidationTable;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Finding;
import longbough.runner.validate.field.FieldReport;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ValidationPageTest {
  private static final String HOSTILE = "</td><script>alert(\"1\")</script><b>'";

  @Test
  void pageIsWellFormedAndShowsEveryCheckUnderItsProcess() throws Exception {
    String page = ValidationPage.of(rows(), FieldReport.none("no folder"), "1.0");
    Document document = parsed(page);
    assertThat(texts(document, "h2"))
        .containsExactly("Growth", "Light", "Beside open measurements");
    assertThat(page).contains("a pass", "b miss", "c wrong", "d open", "at least 3 m");
    assertThat(page).contains("1 of 3 checks tried pass (33 %)", "Why: </strong>the reason");
    assertThat(page).doesNotContain("not shown for a pass", "src=\"http", "url(", "@import");
  }

  @Test
  void oneNumberHasAPictureWithWordsAndSeveralHaveNone() throws Exception {
    Document document = parsed(ValidationPage.of(rows(), FieldReport.none("no folder"), "1.0"));
    List<String> words = new ArrayList<>();
    NodeList pictures = document.getElementsByTagName("svg");
    for (int i = 0; i < pictures.getLength(); i++) {
      Element picture = (Element) pictures.item(i);
      boolean silent = picture.getAttribute("aria-hidden").equals("true");
      assertThat(silent).isNotEqualTo(picture.hasAttribute("aria-label"));
      if (!silent) {
        words.add(picture.getAttribute("aria-label"));
      }
    }
    assertThat(words)
        .containsExactly("Got 1.5 m, in the band 1 to 2.", "Got 2 m, outside the band at least 3.");
  }

  @Test
  void oneNumberIsReadOnlyInTheUnitAskedFor() {
    assertThat(BandPicture.number("-1.5", "m")).isEqualTo(-1.5);
    assertThat(BandPicture.number("3 kg/m2", "kg/m2")).isEqualTo(3);
    assertThat(BandPicture.number("5.4 mm (4.0 / 6.1 early and late)", "mm")).isEqualTo(5.4);
    assertThat(BandPicture.number("0.15, in year 2 0.20", "ratio")).isEqualTo(0.15);
    assertThat(BandPicture.number("1 year", "years")).isEqualTo(1);
    for (String several : List.of("1.05, 1.03, 1.01", "11.0 deciduous, 7.0 needle", "1 and 2")) {
      assertThat(BandPicture.number(several, "ratio")).as(several).isNaN();
    }
    assertThat(BandPicture.number("35 %", "fraction")).isNaN();
    assertThat(BandPicture.number("1 / 2", "m")).isNaN();
    assertThat(BandPicture.number("about 4", "m")).isNaN();
  }

  @Test
  void hostileTextStaysText() throws Exception {
    Check check = check("x", HOSTILE, 1, 2, HOSTILE);
    ValidationRow row =
        new ValidationRow(
            check,
            Standing.MISS,
            new Finding("x", HOSTILE, HOSTILE, false, true, HOSTILE),
            HOSTILE);
    String page = ValidationPage.of(List.of(row), FieldReport.none(HOSTILE), HOSTILE);
    assertThat(page).doesNotContain("<script", "<b>");
    assertThat(parsed(page).getElementsByTagName("script").getLength()).isZero();
  }

  @Test
  void terminalTableSaysTheSumFirstAndKeepsProcessesTogether() {
    List<String> lines = ValidationTable.lines(rows());
    assertThat(lines.get(0)).startsWith("1 of 3 checks tried pass (33 %)");
    assertThat(lines).contains("GROWTH, 1 of 2 pass", "LIGHT, 0 of 1 pass", "Not tried yet: d.");
    assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void nothingTriedIsSaid() {
    assertThat(Tally.of(List.of()).sentence()).isEqualTo("None of 0 published checks was tried.");
  }

  private static List<ValidationRow> rows() {
    return List.of(
        row(check("a", "growth", 1, 2, "a pass"), Standing.PASS, "1.5 m", "not shown for a pass"),
        row(check("c", "light", Double.NaN, Double.NaN, "c wrong"), Standing.WRONG_WAY, "2", "so"),
        row(check("b", "growth", 3, Double.NaN, "b miss"), Standing.MISS, "2 m", "the reason"),
        new ValidationRow(check("d", "light", 1, 2, "d open"), Standing.NOT_TRIED, null, ""));
  }

  private static ValidationRow row(Check check, Standing standing, String got, String why) {
    Finding finding =
        new Finding(check.id(), got, "1 to 2 m", false, true, "Ten invented trees of one kind.");
    return new ValidationRow(check, standing, finding, why);
  }

  private static Check check(String id, String process, double low, double high, String what) {
    return new Check(
        id, process, what, "none", "height", "1.7", low, high, "m", "rises", "read", "A. Paper");
  }

  private static List<String> texts(Document document, String name) {
    List<String> texts = new ArrayList<>();
    NodeList all = document.getElementsByTagName(name);
    for (int i = 0; i < all.getLength(); i++) {
      texts.add(all.item(i).getTextContent());
    }
    return texts;
  }

  private static Document parsed(String page) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(page)));
  }
}
