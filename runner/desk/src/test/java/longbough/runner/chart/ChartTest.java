package longbough.runner.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import longbough.model.pruning.Regime;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.InventedHistories;
import longbough.runner.survival.RegimeSurvival;
import longbough.runner.type.Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class ChartTest {
  private static final String HOSTILE = "<script>alert('\"&')</script>\u0000";

  @TempDir Path folder;

  @Test
  void everyChartIsWrittenAsSvgAndPng() throws Exception {
    List<LineChart> charts = ChartSet.of(InventedHistories.comparison(20, 30));
    ChartFiles.write(charts, folder);
    assertThat(charts.stream().map(LineChart::file))
        .containsExactly(
            "leaf-area",
            "reserve",
            "sprouts",
            "open-wound",
            "decay",
            "wall-ratio",
            "survival",
            "cost");
    for (LineChart chart : charts) {
      byte[] png = Files.readAllBytes(folder.resolve(chart.file() + ".png"));
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
      assertThat(image.getWidth()).isEqualTo(2 * LineChart.WIDTH);
      assertThat(hues(image)).as("coloured pixels of %s", chart.file()).isGreaterThan(2000);
      assertThat(folder.resolve(chart.file() + ".svg"))
          .content()
          .contains("<title>" + chart.heading() + "</title>", "<desc>");
    }
  }

  @Test
  void lightSvgIsWellFormedSmallAndSafe() throws Exception {
    List<Regime> regimes =
        List.of(new Regime(HOSTILE, "", List.of()), new Regime("b & c", "", List.of()));
    for (LineChart chart : ChartSet.of(InventedHistories.comparison(5, 12, regimes))) {
      String svg = SvgChart.of(chart);
      assertThat(svg).doesNotContain("<script").hasSizeLessThan(40_000);
      Document document = parsed(svg);
      assertThat(document.getElementsByTagName("title").item(0).getTextContent())
          .isEqualTo(chart.heading());
      assertThat(document.getElementsByTagName("desc").item(0).getTextContent())
          .contains("b & c: from");
      assertThat(document.getElementsByTagName("script").getLength()).isZero();
    }
  }

  @Test
  void namesInAnyLettersStayOnThePicture() throws Exception {
    List<Regime> regimes = new ArrayList<>();
    for (String name :
        List.of(
            "W".repeat(60),
            "\u526a\u5b9a".repeat(30),
            "\ud83c\udf33".repeat(30),
            "\u0434\u0443\u0431 1")) {
      regimes.add(new Regime(name, "", List.of()));
    }
    for (LineChart chart : ChartSet.of(InventedHistories.comparison(4, 6, regimes))) {
      for (EndLabel label : EndLabel.placed(chart, 66, 300)) {
        assertThat(label.text())
            .allMatch(line -> Fonts.width(line, ChartText.NAME_SIZE) <= ChartText.NAME_WIDTH);
      }
      parsed(SvgChart.of(chart));
      assertThat(ChartFiles.png(chart)).isNotEmpty();
      parsed(ChartFiles.svg(chart));
    }
  }

  @Test
  void deadTreesDoNotPullTheBandsDown() {
    Comparison comparison = InventedHistories.comparison(40, 30);
    LineChart leaf = ChartSet.of(comparison).get(0);
    for (int regime = 0; regime < comparison.regimes().size(); regime++) {
      Line line = leaf.lines().get(regime);
      double[] alive = RegimeSurvival.of(comparison.regimes().get(regime), 30).band().median();
      for (int year = 0; year <= line.lastYear(); year++) {
        assertThat(alive[year]).isPositive();
        assertThat(line.band().low()[year]).isPositive();
      }
    }
  }

  @Test
  void endLabelsNeverTouchAndStayOnThePicture() {
    for (int count = 1; count <= 8; count++) {
      List<Regime> regimes = new ArrayList<>();
      for (int regime = 0; regime < count; regime++) {
        regimes.add(new Regime("a regime with quite a long name, no " + regime, "", List.of()));
      }
      for (LineChart chart : ChartSet.of(InventedHistories.comparison(4, 6, regimes))) {
        double before = 0;
        for (EndLabel label : EndLabel.placed(chart, 66, 380)) {
          assertThat(label.y() - label.height() / 2).isGreaterThanOrEqualTo(before - 1e-9);
          before = label.y() + label.height() / 2;
        }
        assertThat(before).as("%d labels", count).isLessThan(LineChart.HEIGHT);
      }
    }
  }

  @Test
  void scalesAreRoundAndHoldTheValues() {
    for (double highest : new double[] {0, 0.003, 0.99, 1, 7, 328, 1145, 99_999}) {
      NiceScale scale = NiceScale.upTo(highest);
      assertThat(scale.high()).isGreaterThanOrEqualTo(highest);
      assertThat(scale.ticks()).hasSizeBetween(3, 8);
      assertThat(scale.ticks().get(scale.ticks().size() - 1))
          .isCloseTo(scale.high(), within(1e-9 * scale.high()));
    }
    assertThat(NiceScale.years(30)).containsExactly(0, 5, 10, 15, 20, 25, 30);
    assertThat(NiceScale.years(200)).hasSizeLessThan(10);
  }

  @Test
  void valuesAreAsExactAsTheAxis() {
    assertThat(ChartText.value(0.305, 1200)).isEqualTo("0");
    assertThat(ChartText.value(1234.5, 2500)).isEqualTo("1\u00a0235");
    assertThat(ChartText.value(0, 0)).isEqualTo("0");
    assertThat(ChartText.value(0.5, 1)).isEqualTo("0.5");
    assertThat(ChartText.value(0.567, 1)).isEqualTo("0.57");
    assertThat(ChartText.wrapped("a name that is far too long for the room beside any line here"))
        .hasSize(2)
        .allMatch(line -> Fonts.width(line, ChartText.NAME_SIZE) <= ChartText.NAME_WIDTH)
        .last()
        .asString()
        .endsWith("\u2026");
  }

  private static int hues(BufferedImage image) {
    int coloured = 0;
    for (int x = 0; x < image.getWidth(); x += 2) {
      for (int y = 0; y < image.getHeight(); y += 2) {
        int rgb = image.getRGB(x, y);
        coloured += Math.abs((rgb >> 16 & 255) - (rgb & 255)) > 8 ? 1 : 0;
      }
    }
    return coloured;
  }

  private static Document parsed(String xml) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)));
  }
}
