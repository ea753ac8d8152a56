package longbough.runner.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class CloudChartTest {
  private static final String HOSTILE = "<script>\"'&</script>";

  @Test
  void hostileWordsStayWords() throws Exception {
    for (String svg : List.of(cloud(HOSTILE, 20).svg(), spread(HOSTILE).svg())) {
      Document document = parsed(svg);
      assertThat(document.getElementsByTagName("script").getLength()).isZero();
      assertThat(document.getElementsByTagName("title").item(0).getTextContent())
          .startsWith(HOSTILE);
      assertThat(document.getElementsByTagName("desc").item(0).getTextContent()).isEqualTo(HOSTILE);
    }
  }

  @Test
  void everyMeasuredTreeIsADotAndOneFarAboveIsSaid() throws Exception {
    String svg = cloud("Height", 20).svg();
    assertThat(svg.split("h0", -1)).hasSize(41);
    assertThat(svg).doesNotContain("far above");
    String far = cloud("Height", 200).svg();
    assertThat(far.split("h0", -1)).hasSize(40);
    assertThat(far).contains("1 tree far above");
    parsed(far);
  }

  @Test
  void nothingLeavesThePicture() {
    var numbers = java.util.regex.Pattern.compile("M([0-9.-]+) ([0-9.-]+)h0");
    var found = numbers.matcher(cloud("Height", 20).svg());
    while (found.find()) {
      assertThat(Double.parseDouble(found.group(1))).isBetween(0.0, 370.0);
      assertThat(Double.parseDouble(found.group(2))).isBetween(0.0, 270.0);
    }
  }

  private static CloudChart cloud(String title, double last) {
    List<double[]> dots =
        IntStream.rangeClosed(1, 40)
            .mapToObj(i -> new double[] {i, i == 40 ? last : 0.5 * i})
            .toList();
    List<double[]> band =
        IntStream.rangeClosed(1, 40)
            .mapToObj(i -> new double[] {i, 0.3 * i, 0.8 * i, 0.4 * i, 0.6 * i})
            .toList();
    List<double[]> model = List.of(new double[] {1, 1}, new double[] {90, 30});
    return new CloudChart(
        "a", title, "m", "cm", dots, List.of(), band, List.of(model), model, title);
  }

  private static SpreadChart spread(String title) {
    var row = new SpreadChart.Row(title, title, 9, new double[] {1, 2, 3, 4, 5}, 3);
    var empty = new SpreadChart.Row("b", "", 9, new double[] {1, 2, 3, 4, 5}, Double.NaN);
    return new SpreadChart("b", title, "", List.of(row, empty), title);
  }

  private static Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }
}
