package longbough.runner.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import longbough.runner.type.Fonts;
import org.knowm.xchart.XYChart;

/** Title, visit marks and end labels over a finished XChart picture. */
final class Overlay {
  private static final double MARK_RADIUS = 4.2;
  private static final int LEFT = 14;

  private final LineChart chart;
  private final XYChart picture;
  private final Graphics2D canvas;
  private final Frame frame;

  Overlay(LineChart chart, XYChart picture, Graphics2D canvas) {
    this.chart = chart;
    this.picture = picture;
    this.canvas = canvas;
    this.frame = XChartPicture.frame(chart);
  }

  void paint() {
    text(chart.heading(), LEFT, 24, Fonts.semibold(chart.heading(), 18), XChartPicture.TEXT);
    int baseline = 45;
    for (String line : chart.reading()) {
      text(line, LEFT, baseline, Fonts.regular(line, 13), XChartPicture.QUIET);
      baseline += LineChart.READING_HEIGHT;
    }
    axes();
    chart.lines().forEach(this::marks);
    EndLabel.placed(chart, y(chart.scale().high()), y(0)).forEach(this::label);
  }

  private void axes() {
    Font font = Fonts.regular(chart.words().time(), 13);
    FontMetrics metrics = canvas.getFontMetrics(font);
    for (double tick : chart.scale().ticks()) {
      String label = chart.text(tick);
      text(label, x(0) - 8 - metrics.stringWidth(label), y(tick) + 4.5, font, XChartPicture.QUIET);
    }
    canvas.setColor(XChartPicture.AXIS);
    canvas.setStroke(new BasicStroke(1.2f));
    canvas.draw(XChartPicture.segment(x(0), y(0), x(chart.years()), y(0)));
    for (int year : NiceScale.years(chart.years())) {
      canvas.setColor(XChartPicture.AXIS);
      canvas.draw(XChartPicture.segment(x(year), y(0), x(year), y(0) + 5));
      String label = Integer.toString(year);
      text(label, x(year) - metrics.stringWidth(label) / 2.0, y(0) + 19, font, XChartPicture.QUIET);
    }
    double middle = (x(0) + x(chart.years())) / 2 - metrics.stringWidth(chart.words().time()) / 2.0;
    text(chart.words().time(), middle, y(0) + 38, font, XChartPicture.QUIET);
  }

  private void marks(Line line) {
    for (int year : line.visitYears()) {
      if (year <= line.lastYear()) {
        mark(line, x(year), y(line.middle()[year]));
      }
    }
  }

  private void mark(Line line, double x, double y) {
    Shape shape = shape(line.style().mark(), x, y);
    canvas.setColor(XChartPicture.colour(line, XChartPicture.OPAQUE));
    canvas.fill(shape);
    canvas.setColor(Color.WHITE);
    canvas.setStroke(new BasicStroke(1));
    canvas.draw(shape);
  }

  private static Shape shape(RegimeStyle.Mark mark, double x, double y) {
    double[] corners = Marks.corners(mark, MARK_RADIUS);
    if (corners.length == 0) {
      return new Ellipse2D.Double(
          x - MARK_RADIUS, y - MARK_RADIUS, 2 * MARK_RADIUS, 2 * MARK_RADIUS);
    }
    Path2D path = new Path2D.Double();
    path.moveTo(x + corners[0], y + corners[1]);
    for (int i = 2; i < corners.length; i += 2) {
      path.lineTo(x + corners[i], y + corners[i + 1]);
    }
    path.closePath();
    return path;
  }

  private void label(EndLabel label) {
    Line line = label.line();
    double left = x(chart.years()) + 26;
    canvas.setColor(XChartPicture.colour(line, 150));
    canvas.setStroke(new BasicStroke(1));
    canvas.draw(
        XChartPicture.segment(
            x(line.lastYear()) + 3, y(line.middle()[line.lastYear()]), left - 5, label.y()));
    double baseline = label.y() - label.text().size() * EndLabel.LINE_HEIGHT / 2 + 12;
    for (int i = 0; i < label.text().size(); i++) {
      String words = label.text().get(i);
      boolean value = i == label.text().size() - 1;
      Font font = value ? Fonts.regular(words, 13) : Fonts.semibold(words, 13);
      text(words, left, baseline, font, XChartPicture.colour(line, XChartPicture.OPAQUE));
      baseline += EndLabel.LINE_HEIGHT;
    }
  }

  private void text(String text, double x, double baseline, Font font, Color colour) {
    canvas.setFont(font);
    canvas.setColor(colour);
    canvas.drawString(text, (float) x, (float) baseline);
  }

  private double x(double year) {
    return picture.getScreenXFromChart(year) + frame.left();
  }

  private double y(double value) {
    return picture.getScreenYFromChart(value) + frame.top();
  }
}
