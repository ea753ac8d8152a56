package longbough.runner.validate.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import longbough.runner.report.Page;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Reading;

/**
 * What the model gave, as a mark on the band around the published figure. Where a check asks for
 * several numbers each has a picture, as far as they have bands; an end that is not given lets the
 * band run off the edge.
 *
 * @param low lower end of the band, NaN where it has none
 * @param high upper end of the band, NaN where it has none
 * @param got what the model gave
 * @param published the published figure, NaN where it is not one number
 * @param mark how it stands
 * @param said what the model gave, as words
 */
record BandPicture(
    double low, double high, double got, double published, StandingMark mark, String said) {
  /** More than these say less than the words. */
  private static final int MOST = 6;

  private static final int DIGITS = 6;

  private static final double WIDTH = 190;
  private static final double HEIGHT = 40;
  private static final double EDGE = 12;
  private static final double BAR_TOP = 7;
  private static final double BAR = 13;
  private static final double LABEL = 35;

  /** Share of the span left free on either side. */
  private static final double MARGIN = 0.2;

  /** A number, then its unit if need be, then the end or a remark. */
  private static final Pattern ONE_NUMBER =
      Pattern.compile("(-?[0-9]+(?:\\.[0-9]+)?)(?: ([^(,;]+?))?(?: \\(.*|[,;] [a-z].*)?");

  /** The pictures of a row; none where nothing was played or nothing has a band. */
  static List<BandPicture> of(ValidationRow row) {
    Check check = row.check();
    if (row.finding() == null) {
      return List.of();
    }
    StandingMark mark = StandingMark.of(row.standing());
    double got = number(row.finding().got(), check.unit());
    if (!Double.isNaN(got) && !(Double.isNaN(check.low()) && Double.isNaN(check.high()))) {
      double published = number(check.published(), check.unit());
      return List.of(
          new BandPicture(check.low(), check.high(), got, published, mark, row.finding().got()));
    }
    return several(row.finding().readings());
  }

  private static List<BandPicture> several(List<Reading> readings) {
    List<BandPicture> pictures = new ArrayList<>();
    for (int i = 0; i < readings.size() && readings.size() <= MOST; i++) {
      Reading reading = readings.get(i);
      boolean banded = !Double.isNaN(reading.low()) || !Double.isNaN(reading.high());
      if (banded && !Double.isNaN(reading.got())) {
        BandPicture picture =
            new BandPicture(
                reading.low(),
                reading.high(),
                reading.got(),
                Double.NaN,
                StandingMark.DISC,
                String.format(
                    Locale.ROOT, "%.3g (%d of %d)", reading.got(), i + 1, readings.size()));
        pictures.add(
            picture.inBand()
                ? picture
                : new BandPicture(
                    picture.low,
                    picture.high,
                    picture.got,
                    Double.NaN,
                    StandingMark.TRIANGLE,
                    picture.said));
      }
    }
    return pictures;
  }

  private boolean inBand() {
    return !(got < low) && !(got > high);
  }

  /** The number that a text starts with, alone or in the unit asked for; else NaN. */
  static double number(String text, String unit) {
    Matcher matcher = ONE_NUMBER.matcher(text.strip());
    if (!matcher.matches()) {
      return Double.NaN;
    }
    String own = matcher.group(2);
    boolean same = own == null || own.equals(unit) || (own + "s").equals(unit);
    return same ? Double.parseDouble(matcher.group(1)) : Double.NaN;
  }

  /** An end of the band as the check file has it, without the noise of sums. */
  static String text(double value) {
    return BigDecimal.valueOf(value)
        .round(new MathContext(DIGITS))
        .stripTrailingZeros()
        .toPlainString();
  }

  void write(Page page) {
    page.open(
        "svg",
        "class",
        "band",
        "viewBox",
        "0 0 " + StandingMark.number(WIDTH) + " " + StandingMark.number(HEIGHT),
        "role",
        "img",
        "aria-label",
        words());
    page.element("title", words());
    bar(page);
    if (!Double.isNaN(published)) {
      upright(page, x(published), BAR_TOP - 3, BAR_TOP + BAR + 3, "#1d2321", "1.5");
    }
    mark.draw(page, x(got), BAR_TOP + BAR / 2);
    page.close();
  }

  private void bar(Page page) {
    double left = Double.isNaN(low) ? 0 : x(low);
    double right = Double.isNaN(high) ? WIDTH : x(high);
    String middle = StandingMark.number(BAR_TOP + BAR / 2);
    page.empty(
        "line",
        "x1",
        "0",
        "x2",
        StandingMark.number(WIDTH),
        "y1",
        middle,
        "y2",
        middle,
        "stroke",
        "#9aa5a0",
        "stroke-width",
        "1");
    page.empty(
        "rect",
        "x",
        StandingMark.number(left),
        "y",
        StandingMark.number(BAR_TOP),
        "width",
        StandingMark.number(Math.max(1, right - left)),
        "height",
        StandingMark.number(BAR),
        "fill",
        "#cfe0d5");
    boolean apart = right - left > WIDTH / 4 || Double.isNaN(low) || Double.isNaN(high);
    end(page, low, left, apart ? "middle" : "end");
    end(page, high, right, apart ? "middle" : "start");
  }

  private void end(Page page, double value, double x, String anchor) {
    if (Double.isNaN(value)) {
      return;
    }
    upright(page, x, BAR_TOP, BAR_TOP + BAR, "#2f5d3f", "1.5");
    page.element(
        "text",
        text(value),
        "x",
        StandingMark.number(x),
        "y",
        StandingMark.number(LABEL),
        "text-anchor",
        anchor);
  }

  private static void upright(
      Page page, double x, double top, double bottom, String colour, String width) {
    String at = StandingMark.number(x);
    page.empty(
        "line",
        "x1",
        at,
        "x2",
        at,
        "y1",
        StandingMark.number(top),
        "y2",
        StandingMark.number(bottom),
        "stroke",
        colour,
        "stroke-width",
        width);
  }

  private double x(double value) {
    double least = numbers().min().orElseThrow();
    double most = numbers().max().orElseThrow();
    double span = Math.max(most - least, 1e-9 * Math.max(1, Math.abs(most)));
    double share = (value - least) / span;
    double inner = WIDTH - 2 * EDGE;
    return EDGE + inner * (MARGIN + share) / (1 + 2 * MARGIN);
  }

  private DoubleStream numbers() {
    return DoubleStream.of(low, high, got, published).filter(number -> !Double.isNaN(number));
  }

  private String words() {
    String band =
        Double.isNaN(low)
            ? "at most " + text(high)
            : Double.isNaN(high) ? "at least " + text(low) : text(low) + " to " + text(high);
    return "Got " + said + ", " + (inBand() ? "in" : "outside") + " the band " + band + ".";
  }
}
