package longbough.runner.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import longbough.model.pruning.Regime;
import longbough.runner.client.file.Client;
import longbough.runner.client.file.Party;
import longbough.runner.client.page.ClientInput;
import longbough.runner.client.page.ClientReport;
import longbough.runner.client.picture.ClientCharts;
import longbough.runner.client.picture.PlanStrips;
import longbough.runner.client.words.Messages;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Summary;
import longbough.runner.report.Picture;
import longbough.runner.table.Provenance;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ClientReportTest {
  private static final String HOSTILE =
      "</title><script>alert(\"1\")</script><img src=x onerror='1'>\\\"; } body { x: url(http://x)";

  @Test
  void screenAndPaperSayWhatTheyMustAndNeedNothingFromElsewhere() throws Exception {
    ClientInput input = input(InventedHistories.comparison(50, 30), client("reduce"));
    for (String page : List.of(ClientReport.screen(input), ClientReport.paper(input))) {
      Document document = parsed(page);
      assertThat(document.getDocumentElement().getAttribute("lang")).isEqualTo("en");
      assertThat(page)
          .contains("chart-client-leaf", "chart-client-cost")
          .contains("never a safety clearance", "qualified arborist", "ower lines", "wildlife")
          .contains("ree-protection law", "of 50\u00a0futures", "seed 42", "aaaa", "bbbb")
          .contains("An owner", "A. Example", "Found on site", "a crack in the fork")
          .contains("This was not tried for this report")
          .doesNotContain("<script", "src=\"http", "href=\"http", "@import", "onload");
      input
          .summary()
          .comparison()
          .input()
          .filledIn()
          .forEach(line -> assertThat(page).contains(line));
      headingsAreInOrder(document);
      everyPictureHasWords(document, page.contains("chart-client-survival") ? 4 : 3);
      everyIdIsUniqueAndFound(document);
    }
  }

  @Test
  void aRecommendedPlanLeadsElseTheOneThatDoesBest() {
    Comparison comparison = InventedHistories.comparison(50, 30);
    for (var result : comparison.regimes()) {
      String name = result.name();
      assertThat(ClientReport.screen(input(comparison, client(name))))
          .contains("We recommend \u201c" + name + "\u201d");
    }
    assertThat(ClientReport.screen(input(comparison, client(""))))
        .doesNotContain("We recommend")
        .contains("does best on");
  }

  @Test
  void hostileTextStaysText() throws Exception {
    Client client =
        new Client(
            HOSTILE,
            HOSTILE,
            HOSTILE,
            HOSTILE,
            new Party(HOSTILE, List.of(HOSTILE)),
            new Party(HOSTILE, List.of(HOSTILE)),
            Optional.empty(),
            HOSTILE,
            List.of(HOSTILE),
            HOSTILE,
            HOSTILE,
            HOSTILE,
            "en",
            Messages.english());
    ClientInput input = input(InventedHistories.hostile(HOSTILE), client);
    for (String page : List.of(ClientReport.screen(input), ClientReport.paper(input))) {
      assertThat(page).doesNotContain("<script", "<img", "<b>", "\u202e", "\u0000");
      Document document = parsed(page);
      assertThat(document.getElementsByTagName("h1").item(0).getTextContent()).isEqualTo(HOSTILE);
      String style = document.getElementsByTagName("style").item(0).getTextContent();
      assertThat(style).doesNotContain("url(", "</", "} body {");
      assertThat(style.replaceAll("\"[^\"]*\"", "")).doesNotContain("script", "http");
    }
  }

  @Test
  void onePlanNeedsNoOther() throws Exception {
    Comparison two = InventedHistories.comparison(5, 4);
    List<Regime> one = two.input().regimes().subList(0, 1);
    String page = ClientReport.screen(input(InventedHistories.comparison(5, 1, one), client("")));
    parsed(page);
    assertThat(page).contains("One plan was played").doesNotContain("against \u201c");
  }

  @Test
  void sameComparisonGivesTheSamePage() {
    ClientInput first = input(InventedHistories.comparison(10, 9), client(""));
    ClientInput second = input(InventedHistories.comparison(10, 9), client(""));
    assertThat(ClientReport.screen(first)).isEqualTo(ClientReport.screen(second));
  }

  @Test
  void drawnYearsAreThoseOfTheReport() {
    assertThat(PlanStrips.years(30)).containsExactly(0, 5, 15, 30);
    assertThat(PlanStrips.years(1)).containsExactly(0, 1);
    assertThat(PlanStrips.years(200)).containsExactly(0, 33, 100, 200);
  }

  private static Client client(String recommended) {
    return new Client(
        "",
        "",
        "",
        "",
        new Party("An owner", List.of("One street")),
        new Party("A. Example", List.of()),
        Optional.empty(),
        "",
        List.of("a crack in the fork"),
        recommended,
        "",
        "",
        "en",
        Messages.english());
  }

  private static ClientInput input(Comparison comparison, Client client) {
    Picture drawing =
        new Picture(
            "Side", "<svg xmlns=\"http://www.w3.org/2000/svg\"><title>t</title></svg>", "a");
    return new ClientInput(
        client,
        Summary.of(comparison),
        Optional.empty(),
        List.of(drawing),
        ClientCharts.of(comparison, client.words()),
        new Provenance("0.1", "canal-lime.yaml", "aaaa", "bbbb", List.of()),
        false);
  }

  private static void headingsAreInOrder(Document document) {
    assertThat(document.getElementsByTagName("h1").getLength()).isEqualTo(1);
    int level = 1;
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      String name = all.item(i).getNodeName();
      if (name.matches("h[1-6]")) {
        assertThat(name.charAt(1) - '0').isLessThanOrEqualTo(level + 1);
        level = name.charAt(1) - '0';
      }
    }
    assertThat(level).isGreaterThan(1);
  }

  private static void everyPictureHasWords(Document document, int charts) {
    NodeList pictures = document.getElementsByTagName("svg");
    assertThat(pictures.getLength()).isEqualTo(1 + charts);
    for (int i = 0; i < pictures.getLength(); i++) {
      Element picture = (Element) pictures.item(i);
      assertThat(picture.getElementsByTagName("title").item(0).getTextContent()).isNotBlank();
    }
  }

  private static void everyIdIsUniqueAndFound(Document document) {
    List<String> ids = new ArrayList<>();
    List<String> wanted = new ArrayList<>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      if (element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
      if (element.hasAttribute("aria-labelledby")) {
        wanted.addAll(List.of(element.getAttribute("aria-labelledby").split(" ")));
      }
    }
    assertThat(ids).doesNotHaveDuplicates().containsAll(wanted);
  }

  private static Document parsed(String page) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(page)));
  }
}
