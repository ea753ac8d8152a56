package longbough.runner.validate.page;

import java.util.Locale;
import longbough.runner.report.Page;
import longbough.runner.validate.Standing;

/** The mark of a standing; its shape tells it apart without colour. */
enum StandingMark {
  DISC(Standing.PASS, "#1b6e53"),
  TRIANGLE(Standing.MISS, "#b35900"),
  CROSS(Standing.WRONG_WAY, "#7a1f66"),
  RING(Standing.NOT_TRIED, "#5b6560");

  private static final double RADIUS = 5;

  private final Standing standing;
  private final String colour;

  StandingMark(Standing standing, String colour) {
    this.standing = standing;
    this.colour = colour;
  }

  static StandingMark of(Standing standing) {
    for (StandingMark mark : values()) {
      if (mark.standing == standing) {
        return mark;
      }
    }
    throw new IllegalArgumentException("no mark for " + standing);
  }

  /** A small picture of the mark, beside the word that says the same. */
  static void alone(Page page, Standing standing) {
    page.open("svg", "class", "mark", "viewBox", "-7 -7 14 14", "aria-hidden", "true");
    of(standing).draw(page, 0, 0);
    page.close();
  }

  /** The mark inside a picture. */
  void draw(Page page, double x, double y) {
    switch (this) {
      case DISC ->
          page.empty(
              "circle", "cx", number(x), "cy", number(y), "r", number(RADIUS), "fill", colour);
      case TRIANGLE ->
          page.empty(
              "path",
              "d",
              "M"
                  + at(x, y - RADIUS - 1)
                  + "L"
                  + at(x + RADIUS + 1, y + RADIUS)
                  + "L"
                  + at(x - RADIUS - 1, y + RADIUS)
                  + "Z",
              "fill",
              colour);
      case CROSS ->
          page.empty(
              "path",
              "d",
              "M"
                  + at(x - RADIUS, y - RADIUS)
                  + "L"
                  + at(x + RADIUS, y + RADIUS)
                  + "M"
                  + at(x - RADIUS, y + RADIUS)
                  + "L"
                  + at(x + RADIUS, y - RADIUS),
              "stroke",
              colour,
              "stroke-width",
              "3",
              "stroke-linecap",
              "round");
      case RING ->
          page.empty(
              "circle",
              "cx",
              number(x),
              "cy",
              number(y),
              "r",
              number(RADIUS - 1),
              "fill",
              "none",
              "stroke",
              colour,
              "stroke-width",
              "1.5");
    }
  }

  static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String at(double x, double y) {
    return number(x) + " " + number(y);
  }
}
