package longbough.runner.report;

import java.util.Locale;
import longbough.runner.verdict.Figures;

/** Small pieces of language that several parts need. */
final class Words {
  private static final double CM = 100;

  private Words() {}

  /** A number with its noun. */
  static String count(long number, String noun) {
    return Figures.number(number) + "\u00a0" + noun + (number == 1 ? "" : "s");
  }

  static String cm(double metres) {
    return Figures.number(CM * metres) + "\u00a0cm";
  }

  static String metres(double metres) {
    return Figures.number(metres) + "\u00a0m";
  }

  /** A constant's name in small letters with spaces. */
  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
