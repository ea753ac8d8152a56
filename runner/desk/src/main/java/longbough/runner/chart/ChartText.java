package longbough.runner.chart;

import java.util.List;
import java.util.Locale;
import longbough.runner.type.Lines;

/**
 * Text in charts: values as exact as an axis can show, and names cut to what fits beside a line.
 */
final class ChartText {
  private static final double RESOLUTION = 100;
  static final double NAME_WIDTH = 180;
  static final double NAME_SIZE = 13;
  private static final int MOST_DECIMALS = 9;
  private static final double VALUE_WIDTH = 45;
  private static final int MOST_LINES = 2;

  private ChartText() {}

  /** A value on an axis that ends at the given value, to about a hundredth of the axis. */
  static String value(double value, double axisHigh) {
    double wanted = axisHigh > 0 ? Math.ceil(-Math.log10(axisHigh / RESOLUTION) - 1e-9) : 0;
    int decimals = (int) Math.max(0, Math.min(MOST_DECIMALS, wanted));
    String text = String.format(Locale.ROOT, "%,." + decimals + "f", value).replace(',', '\u00a0');
    if (decimals > 0) {
      text = text.replaceFirst("\\.?0+$", "");
    }
    return text.equals("-0") ? "0" : text;
  }

  /** A name in at most two lines. */
  static List<String> wrapped(String name) {
    return Lines.of(name, NAME_SIZE, NAME_WIDTH, MOST_LINES);
  }

  /** A name in one line that leaves room for a value. */
  static String cut(String name) {
    return String.join("", Lines.of(name, NAME_SIZE, NAME_WIDTH - VALUE_WIDTH, 1));
  }
}
