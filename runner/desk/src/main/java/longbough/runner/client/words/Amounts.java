package longbough.runner.client.words;

import java.util.List;
import java.util.Locale;
import longbough.runner.compare.Metric;
import longbough.runner.verdict.Figures;

/** Numbers with their units in the language of the report. */
public final class Amounts {
  private static final double CM = 100;

  /** From here on a half more or less is nothing: 9.95 would be written as 10. */
  private static final double WHOLE_FROM = 9.95;

  private final Messages words;
  private final String currency;

  public Amounts(Messages words, String currency) {
    this.words = words;
    this.currency = currency;
  }

  /** A number with three digits, or whole where it is larger. */
  public String number(double value) {
    return Figures.number(value).replace(".", words.say("number.decimal_mark"));
  }

  /** A number as a client wants it: whole from ten on, else with one decimal. */
  public String about(double value) {
    return Double.isNaN(value) || Math.abs(value) >= WHOLE_FROM
        ? whole(value)
        : number(Math.rint(10 * value) / 10);
  }

  /** A share without decimals. */
  public String percent(double share) {
    return Double.isNaN(share) ? number(share) : words.say("unit.percent", whole(100 * share));
  }

  public String metres(double value) {
    return words.say("unit.metres", number(value));
  }

  /** A length given in metres, in centimetres. */
  public String centimetres(double metres) {
    return words.say("unit.centimetres", about(CM * metres));
  }

  /** A share that may be a few thousandths. */
  public String finePercent(double share) {
    return words.say("unit.percent", number(100 * share));
  }

  public String degrees(double value) {
    return words.say("unit.degrees", whole(value));
  }

  public String hours(double value) {
    return words.say("unit.hours", about(value));
  }

  /** An amount of money without decimals. */
  public String money(double value) {
    return words.say("unit.money", whole(value), currency);
  }

  /** An amount of money as it stands under a heading that names the currency. */
  public String bareMoney(double value) {
    return whole(value);
  }

  public String years(long count) {
    return words.say("unit.years", count, whole(count));
  }

  public String futures(long count) {
    return words.say("unit.futures", count, whole(count));
  }

  public String currency() {
    return currency;
  }

  /** A figure of the comparison with its unit. */
  public String of(Metric metric, double value) {
    if (Double.isNaN(value)) {
      return number(value);
    }
    return switch (metric.unit()) {
      case "1", "a year" -> words.say("unit.percent", about(100 * value));
      case "m\u00b2" -> words.say("unit.square_metres", about(value));
      case "h" -> hours(value);
      case "" -> money(value);
      case "years" -> words.say("unit.years", shownYears(value), about(value));
      default -> whole(value);
    };
  }

  /** For the plural: a little more than one is shown as one, and half a year is not one. */
  private long shownYears(double value) {
    if (about(value).equals(whole(1))) {
      return 1;
    }
    return value < 1 ? 0 : (long) Math.ceil(value);
  }

  /** A figure without its unit; shares in per cent. */
  public String bare(Metric metric, double value) {
    return switch (metric.unit()) {
      case "1", "a year" -> about(100 * value);
      case "m\u00b2", "h", "years" -> about(value);
      default -> whole(value);
    };
  }

  /** A difference of that figure, without sign; shares in points. */
  public String difference(Metric metric, double value) {
    double size = Math.abs(value);
    return metric.unit().equals("1") || metric.unit().equals("a year")
        ? words.say("unit.points", about(100 * size))
        : of(metric, size);
  }

  /** Several things in one clause. */
  public String list(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    String all = items.get(0);
    for (int i = 1; i < items.size() - 1; i++) {
      all = words.say("list.more", all, items.get(i));
    }
    return words.say("list.last", all, items.get(items.size() - 1));
  }

  /** A plan's name as it stands in sentences. */
  public String quoted(String name) {
    return words.say("quoted", name);
  }

  /** A constant's name as the end of a key. */
  public static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private String whole(double value) {
    return number(Math.rint(value));
  }
}
