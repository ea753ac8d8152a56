package longbough.runner.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import longbough.model.state.CauseOfDeath;
import longbough.runner.type.Fonts;

/** Paints the bars of causes of death. */
final class CausePicture {
  private static final int LEFT = 14;
  private static final int TOP = 72;
  private static final int BAR = 26;
  private static final int STEP = 62;
  private static final int RIGHT = 120;
  private static final int LEGEND = 30;
  private static final double ROOM = 12;
  private static final Color ALIVE = new Color(0xeef2ee);

  private final CauseBars chart;
  private final Graphics2D canvas;

  private CausePicture(CauseBars chart, Graphics2D canvas) {
    this.chart = chart;
    this.canvas = canvas;
  }

  static int height(CauseBars chart) {
    return TOP + STEP * chart.bars().size() + LEGEND;
  }

  static void paint(CauseBars chart, Graphics2D canvas) {
    new CausePicture(chart, canvas).paint();
  }

  private void paint() {
    canvas.setColor(Color.WHITE);
    canvas.fillRect(0, 0, CauseBars.WIDTH, height(chart));
    text(LEFT, 24, true, 18, XChartPicture.TEXT, chart.heading());
    text(LEFT, 45, false, 13, XChartPicture.QUIET, chart.reading());
    int y = TOP;
    for (CauseBars.Bar bar : chart.bars()) {
      bar(bar, y);
      y += STEP;
    }
    legend(y + LEGEND / 2);
  }

  private void bar(CauseBars.Bar bar, int y) {
    Color name = new Color(bar.style().rgb());
    text(LEFT, y + 12, true, 13, name, bar.regime());
    double top = y + 18;
    double whole = CauseBars.WIDTH - LEFT - RIGHT;
    double x = LEFT;
    for (CauseOfDeath cause : chart.occurring()) {
      double width = whole * bar.causes().get(cause);
      canvas.setColor(CauseColours.of(cause));
      canvas.fill(new Rectangle2D.Double(x, top, width, BAR));
      label(cause, CauseBars.percent(bar.causes().get(cause)), x, width, top);
      canvas.setColor(Color.WHITE);
      canvas.setStroke(new BasicStroke(1));
      canvas.draw(new Line2D.Double(x + width, top, x + width, top + BAR));
      x += width;
    }
    canvas.setColor(ALIVE);
    canvas.fill(new Rectangle2D.Double(x, top, LEFT + whole - x, BAR));
    canvas.setColor(XChartPicture.AXIS);
    canvas.draw(new Rectangle2D.Double(LEFT, top, whole, BAR));
    String alive = "alive " + CauseBars.percent(bar.alive());
    text(LEFT + whole + 8, top + 18, false, 13, XChartPicture.TEXT, alive);
  }

  // The whole label where it has room, else the figure, else nothing: the legend has the colour.
  private void label(CauseOfDeath cause, String percent, double x, double width, double top) {
    for (String words : List.of(cause.label() + " " + percent, percent)) {
      double needs = Fonts.width(words, 12) + ROOM;
      if (needs <= width) {
        text(x + ROOM / 2, top + 18, false, 12, Color.WHITE, words);
        return;
      }
    }
  }

  private void legend(int y) {
    if (chart.occurring().isEmpty()) {
      text(LEFT, y, false, 13, XChartPicture.QUIET, "No tree dies in any future.");
      return;
    }
    double x = LEFT;
    for (CauseOfDeath cause : chart.occurring()) {
      canvas.setColor(CauseColours.of(cause));
      canvas.fill(new Rectangle2D.Double(x, y - 10, 12, 12));
      text(x + 17, y, false, 13, XChartPicture.TEXT, cause.label());
      x += 17 + Fonts.width(cause.label(), 13) + 20;
    }
  }

  private void text(double x, double y, boolean bold, double size, Color colour, String words) {
    canvas.setFont(bold ? Fonts.semibold(words, size) : Fonts.regular(words, size));
    canvas.setColor(colour);
    canvas.drawString(words, (float) x, (float) y);
  }
}
