package longbough.runner.chart;

import java.util.List;
import longbough.runner.compare.Band;

/**
 * One regime in a chart.
 *
 * @param name the regime's name
 * @param style how it looks
 * @param middle value by year from year 0; {@link Double#NaN} from where there is none
 * @param band values around it, or null where the chart has none
 * @param visitYears years with a visit
 */
public record Line(
    String name, RegimeStyle style, double[] middle, Band band, List<Integer> visitYears) {

  /** Last year that has a value. */
  public int lastYear() {
    int year = middle.length - 1;
    while (year > 0 && Double.isNaN(middle[year])) {
      year--;
    }
    return year;
  }

  public double highest() {
    double highest = 0;
    for (int year = 0; year <= lastYear(); year++) {
      highest = Math.max(highest, band == null ? middle[year] : band.high()[year]);
    }
    return highest;
  }
}
