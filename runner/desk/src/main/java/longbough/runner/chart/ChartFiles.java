package longbough.runner.chart;

import de.erichseifert.vectorgraphics2d.Document;
import de.erichseifert.vectorgraphics2d.Processors;
import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.util.PageSize;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes charts as SVG and, at double size, as PNG. */
public final class ChartFiles {
  private static final int PIXELS_PER_UNIT = 2;

  /** Names a file on the network, which a strict reader would fetch. */
  private static final Pattern DOCTYPE = Pattern.compile("<!DOCTYPE[^>]*>\\s*");

  private ChartFiles() {}

  public static void write(List<LineChart> charts, Path folder) throws IOException {
    for (LineChart chart : charts) {
      Files.write(folder.resolve(chart.file() + ".png"), png(chart));
      Files.writeString(folder.resolve(chart.file() + ".svg"), svg(chart));
    }
  }

  /** Writes the bars of causes of death. */
  public static void write(CauseBars chart, Path folder) throws IOException {
    int height = CausePicture.height(chart);
    Consumer<Graphics2D> painter = canvas -> CausePicture.paint(chart, canvas);
    Files.write(folder.resolve(CauseBars.FILE + ".png"), png(painter, CauseBars.WIDTH, height));
    Files.writeString(
        folder.resolve(CauseBars.FILE + ".svg"),
        svg(painter, CauseBars.WIDTH, height, chart.heading(), chart.description()));
  }

  static byte[] png(LineChart chart) throws IOException {
    return png(canvas -> XChartPicture.paint(chart, canvas), LineChart.WIDTH, LineChart.HEIGHT);
  }

  private static byte[] png(Consumer<Graphics2D> painter, int width, int height)
      throws IOException {
    BufferedImage image =
        new BufferedImage(
            width * PIXELS_PER_UNIT, height * PIXELS_PER_UNIT, BufferedImage.TYPE_INT_RGB);
    Graphics2D canvas = image.createGraphics();
    canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    canvas.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    canvas.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    canvas.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    canvas.scale(PIXELS_PER_UNIT, PIXELS_PER_UNIT);
    painter.accept(canvas);
    canvas.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
      ImageIO.write(image, "png", stream);
    }
    return bytes.toByteArray();
  }

  static String svg(LineChart chart) throws IOException {
    return svg(
        canvas -> XChartPicture.paint(chart, canvas),
        LineChart.WIDTH,
        LineChart.HEIGHT,
        chart.heading(),
        chart.description());
  }

  private static String svg(
      Consumer<Graphics2D> painter, int width, int height, String heading, String description)
      throws IOException {
    VectorGraphics2D canvas = new VectorGraphics2D();
    painter.accept(canvas);
    Document document =
        Processors.get("svg").getDocument(canvas.getCommands(), new PageSize(0, 0, width, height));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.writeTo(bytes);
    return described(bytes.toString(StandardCharsets.UTF_8), heading, description);
  }

  // Text is painted as outlines, so that it looks the same everywhere; the words are added for
  // readers who don't see it.
  private static String described(String svg, String heading, String description) {
    int root = svg.indexOf('>', svg.indexOf("<svg")) + 1;
    return DOCTYPE.matcher(svg.substring(0, root)).replaceFirst("")
        + "\n  <title>"
        + MarkupText.of(heading)
        + "</title>\n  <desc>"
        + MarkupText.of(description)
        + "</desc>"
        + svg.substring(root);
  }
}
