package longbough.runner.report;

import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.SvgWriter;

/** A chart inside a page, drawn as the page is written. */
public final class ChartFigure {

  private ChartFigure() {}

  /** Writes the chart as a figure of its own. */
  public static void write(Page page, Scene chart) {
    page.open("figure", "class", "chart");
    String svg = SvgWriter.write(chart);
    page.markup(svg.substring(svg.indexOf("<svg"))).close();
  }
}
