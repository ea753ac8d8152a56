package longbough.runner.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import longbough.runner.chart.ChartSet;
import longbough.runner.chart.MarkupText;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Summary;
import longbough.runner.table.Provenance;
import longbough.runner.verdict.LimitWarnings;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ReportTest {
  private static final String HOSTILE =
      "</title><script>alert(\"1\")</script><img src=x onerror='1'>";

  @Test
  void pageIsWellFormedAndSmallAndNeedsNothingFromElsewhere() throws Exception {
    String page = page(InventedHistories.comparison(100, 30), List.of());
    assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(3_000_000);
    Document document = parsed(page);
    assertThat(document.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    assertThat(page)
        .doesNotContain("<script", "src=\"http", "href=\"http", "url(", "@import", "onload");
    for (String element : List.of("link", "iframe", "object", "script", "base")) {
      assertThat(document.getElementsByTagName(element).getLength()).as(element).isZero();
    }
  }

  @Test
  void everyPictureHasWordsAndEveryIdIsUnique() throws Exception {
    Picture drawing =
        new Picture(
            "Side view",
            "<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"><title>t</title></svg>",
            "The tree from the side.");
    Document document =
        parsed(page(InventedHistories.comparison(20, 12), List.of(drawing, drawing)));
    NodeList pictures = document.getElementsByTagName("svg");
    assertThat(pictures.getLength()).isEqualTo(8 + 2);
    for (int i = 0; i < pictures.getLength(); i++) {
      Element picture = (Element) pictures.item(i);
      assertThat(picture.getElementsByTagName("title").item(0).getTextContent()).isNotBlank();
    }
    List<String> ids = new ArrayList<>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      if (element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
      for (String reference : element.getAttribute("aria-labelledby").split(" ")) {
        assertThat(reference.isEmpty() || has(document, reference)).as(reference).isTrue();
      }
    }
    assertThat(ids).doesNotHaveDuplicates();
  }

  @Test
  void headingsAreInOrder() throws Exception {
    Document document = parsed(page(InventedHistories.comparison(20, 12), List.of()));
    assertThat(document.getElementsByTagName("h1").getLength()).isEqualTo(1);
    int level = 1;
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      String name = all.item(i).getNodeName();
      if (name.matches("h[1-6]")) {
        int next = name.charAt(1) - '0';
        assertThat(next).isLessThanOrEqualTo(level + 1);
        level = next;
      }
    }
  }

  @Test
  void hostileTextStaysText() throws Exception {
    String page = page(InventedHistories.hostile(HOSTILE), List.of());
    assertThat(page).doesNotContain("<script", "<img", "<b>", "\u202e", "\u0000");
    Document document = parsed(page);
    assertThat(document.getElementsByTagName("h1").item(0).getTextContent()).isEqualTo(HOSTILE);
    assertThat(document.getElementsByTagName("script").getLength()).isZero();
  }

  @Test
  void saysWhatItMust() {
    Comparison comparison = InventedHistories.comparison(50, 30);
    String page = page(comparison, List.of());
    assertThat(page)
        .contains("qualified arborist", "ower lines", "ree-protection law", "wildlife")
        .contains("never a safety clearance", "licensed practice")
        .contains("seed 42", "aaaa", "bbbb", "canal-lime.yaml")
        .contains("of 50 futures")
        .contains("Year 12", "drought (38\u00a0% of the water needed)");
    comparison.input().filledIn().forEach(line -> assertThat(page).contains(MarkupText.of(line)));
    assertThat(page).contains("more than a quarter of the live foliage");
  }

  @Test
  void drawingsThatAreTooHeavyAreLeftOut() {
    String heavy = "<svg>" + "x".repeat(DrawingSection.ROOM / 2) + "</svg>";
    List<Picture> pictures =
        List.of(
            new Picture("a", heavy, "a"),
            new Picture("b", heavy, "b"),
            new Picture("c", "<svg/>", "c"));
    String page = page(InventedHistories.comparison(5, 30), pictures);
    assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(3_000_000);
    assertThat(page.contains("More drawings are in the folder")).isTrue();
  }

  @Test
  void sameComparisonGivesTheSamePage() {
    assertThat(page(InventedHistories.comparison(10, 9), List.of()))
        .isEqualTo(page(InventedHistories.comparison(10, 9), List.of()));
  }

  private static String page(Comparison comparison, List<Picture> drawings) {
    Provenance provenance =
        new Provenance("0.1", "canal-lime.yaml", "aaaa", "bbbb", LimitWarnings.of(comparison));
    return Report.of(
        new ReportInput(
            Summary.of(comparison),
            HOSTILE,
            ChartSet.of(comparison),
            Optional.empty(),
            drawings,
            provenance));
  }

  private static boolean has(Document document, String id) {
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      if (((Element) all.item(i)).getAttribute("id").equals(id)) {
        return true;
      }
    }
    return false;
  }

  private static Document parsed(String page) throws Exception {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    return builder.parse(new InputSource(new StringReader(page)));
  }
}
