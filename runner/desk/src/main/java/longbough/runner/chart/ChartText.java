package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Text in charts: values as exact as an axis can show, and names cut to what fits beside a line. */
final class ChartText {
  private static final double RESOLUTION = 100;
  static final int LINE_CHARS = 24;
  private static final int MOST_DECIMALS = 9;
  private static final int VALUE_CHARS = 5;
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
    List<String> lines = new ArrayList<>();
    String rest = name.strip();
    while (!rest.isEmpty() && lines.size() < MOST_LINES) {
      boolean last = lines.size() == MOST_LINES - 1;
      int cut = rest.length() <= LINE_CHARS ? rest.length() : last ? LINE_CHARS - 1 : breakOf(rest);
      String line = rest.substring(0, cut).strip();
      rest = rest.substring(cut).strip();
      lines.add(last && !rest.isEmpty() ? line + "\u2026" : line);
    }
    return lines;
  }

  /** A name in one line that leaves room for a value. */
  static String cut(String name) {
    String text = name.strip();
    int room = LINE_CHARS - VALUE_CHARS;
    return text.length() <= room ? text : text.substring(0, room - 1).strip() + "\u2026";
  }

  private static int breakOf(String text) {
    int space = text.lastIndexOf(' ', LINE_CHARS);
    return space > LINE_CHARS / 3 ? space : LINE_CHARS;
  }
}
