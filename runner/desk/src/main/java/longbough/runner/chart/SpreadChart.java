package longbough.runner.chart;

import java.util.List;

/**
 * How measured values spread in several groups, and what the model gives: a row a group, with a
 * thin bar from the 5 % to the 95 % point, a thick one around the middle half, a tick at the
 * median, and a mark for the model.
 *
 * @param id of its own on a page
 * @param title what is measured
 * @param unit its unit, or empty
 * @param rows the groups
 * @param words what it shows, for readers who don't see it
 */
public record SpreadChart(String id, String title, String unit, List<Row> rows, String words) {

  /**
   * One group.
   *
   * @param name who was measured
   * @param note who stands for them in the model, or empty
   * @param n how many values
   * @param points the 5, 25, 50, 75 and 95 % points
   * @param model what the model gives; NaN where it gives nothing
   */
  public record Row(String name, String note, int n, double[] points, double model) {}

  /** The chart as SVG. */
  public String svg() {
    return new SpreadSvg(this).paint();
  }

  String heading() {
    return unit.isEmpty() ? title : title + ", " + unit;
  }
}
