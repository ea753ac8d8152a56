package longbough.runner.survey;

import java.util.List;

/** Units in which a length may be given; scenarios are metric. */
public enum Unit {
  M("m", 1, List.of("metre", "metres", "meter", "meters")),
  FT("ft", 0.3048, List.of("foot", "feet", "'")),
  CM("cm", 1, List.of("centimetre", "centimetres", "centimeters")),
  IN("in", 2.54, List.of("inch", "inches", "\"")),
  NONE("", 1, List.of());

  private final String word;
  private final double metric;
  private final List<String> otherWords;

  Unit(String word, double metric, List<String> otherWords) {
    this.word = word;
    this.metric = metric;
    this.otherWords = otherWords;
  }

  /** As it stands at the end of a heading. */
  public String word() {
    return word;
  }

  /** How many of the metric unit (m or cm) one of these is. */
  public double metric() {
    return metric;
  }

  /** Whether people call it so. */
  public boolean called(String text) {
    return text.equals(word) || otherWords.contains(text);
  }

  /** Whether people who measure so work in feet and inches. */
  public boolean us() {
    return this == FT || this == IN;
  }
}
