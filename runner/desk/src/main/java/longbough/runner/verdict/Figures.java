package longbough.runner.verdict;

import java.util.Locale;
import longbough.runner.compare.Metric;

/** Figures as people read them: three digits, per cent for shares, the unit behind. */
public final class Figures {
  private static final char SPACE = '\u00a0';
  private static final String NONE = "\u2013";
  private static final int DIGITS = 3;

  private Figures() {}

  /** A figure with its unit; a dash where there is none. */
  public static String of(Metric metric, double value, String currency) {
    if (Double.isNaN(value)) {
      return NONE;
    }
    return bare(metric, value) + unit(metric, currency);
  }

  /** A figure without its unit; shares in per cent. */
  public static String bare(Metric metric, double value) {
    return number(share(metric) ? 100 * value : value);
  }

  /** The unit with the space before it; nothing for a plain number. */
  public static String unit(Metric metric, String currency) {
    String text = unitWord(metric, currency);
    return text.isEmpty() ? "" : SPACE + text.replace(' ', SPACE);
  }

  /** The unit alone; nothing for a plain number. */
  public static String unitWord(Metric metric, String currency) {
    return switch (metric.unit()) {
      case "1" -> "%";
      case "a year" -> "% a year";
      case "number" -> "";
      case "" -> currency;
      default -> metric.unit();
    };
  }

  /** A number with three digits, or whole where it is larger; a dash where there is none. */
  public static String number(double value) {
    if (Double.isNaN(value)) {
      return NONE;
    }
    double size = Math.abs(value);
    int decimals = 0;
    if (size > 0 && size < Math.pow(10, DIGITS - 1.0)) {
      int before = (int) Math.floor(Math.log10(size)) + 1;
      decimals = Math.min(DIGITS, Math.max(0, DIGITS - Math.max(1, before)));
    }
    String text = String.format(Locale.ROOT, "%,." + decimals + "f", value).replace(',', SPACE);
    if (decimals > 0) {
      text = text.replaceFirst("\\.?0+$", "");
    }
    return text.equals("-0") ? "0" : text.replace('-', '\u2212');
  }

  /** A share as per cent without decimals. */
  public static String percent(double share) {
    return Double.isNaN(share) ? NONE : Math.round(100 * share) + (SPACE + "%");
  }

  private static boolean share(Metric metric) {
    boolean probability = metric.unit().equals("a year");
    return probability || metric.unit().equals("1");
  }
}
