package longbough.runner.chart;

import java.util.List;

/**
 * Many measured trees as a cloud of dots, the bands in which half and most of them lie, and the
 * model's trees as lines through it.
 *
 * @param id of its own on a page
 * @param title what is measured
 * @param unit its unit
 * @param across what the lying axis shows, with its unit
 * @param dots measured, x and y
 * @param rings measured by another method, x and y: shown, not counted
 * @param band x, low and high of the wide band, low and high of the narrow one; by rising x
 * @param futures the model's trees, each x and y by year
 * @param middle the model's middle tree
 * @param words what it shows, for readers who don't see it
 */
public record CloudChart(
    String id,
    String title,
    String unit,
    String across,
    List<double[]> dots,
    List<double[]> rings,
    List<double[]> band,
    List<List<double[]>> futures,
    List<double[]> middle,
    String words) {
  public static final String DOT = "#5b6560";
  public static final String WIDE = "#e3ebdc";
  public static final String NARROW = "#c2d3b4";
  public static final String MODEL = "#0b5fa5";

  /** The chart as SVG. */
  public String svg() {
    return new CloudSvg(this).paint();
  }

  String heading() {
    return title + ", " + unit;
  }
}
