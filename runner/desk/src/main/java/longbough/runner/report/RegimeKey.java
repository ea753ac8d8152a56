package longbough.runner.report;

import longbough.runner.chart.RegimeStyle;

/** A regime's name with the dot in its colour that the charts use. */
public final class RegimeKey {

  private RegimeKey() {}

  public static void heading(
      Page page, String element, String name, int regime, String... attributes) {
    page.open(element, attributes);
    write(page, name, regime);
    page.close();
  }

  static void write(Page page, String name, int regime) {
    String colour = "background:" + RegimeStyle.of(regime).colour();
    page.open("span", "class", "key", "style", colour, "aria-hidden", "true").close();
    page.text(name);
  }
}
