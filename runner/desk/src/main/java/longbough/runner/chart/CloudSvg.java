package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Paints a cloud with its bands and lines. */
final class CloudSvg {
  private static final int WIDTH = 370;
  private static final int HEIGHT = 270;
  private static final double LEFT = 46;
  private static final double RIGHT = 14;
  private static final double TOP = 30;
  private static final double BOTTOM = 44;
  private static final double DOT = 3.2;

  /** A dot this much above the whole band would press all others to the ground. */
  private static final double FAR = 1.4;

  private static final String END = "fill=\"#555\" text-anchor=\"end\"";
  private static final String MIDDLE = "fill=\"#555\" text-anchor=\"middle\"";

  private final CloudChart chart;
  private final NiceScale across;
  private final NiceScale up;
  private final double limit;
  private final SvgSheet out;

  CloudSvg(CloudChart chart) {
    this.chart = chart;
    this.across = NiceScale.upTo(highest(Stream.of(chart.dots(), chart.band()), 0));
    this.limit = FAR * highest(Stream.of(chart.band()), 2);
    List<double[]> near = near(chart.dots(), chart.rings());
    this.up = NiceScale.upTo(highest(Stream.of(near, shown(chart.middle())), 1));
    this.out = new SvgSheet(chart.id(), WIDTH, HEIGHT, chart.heading(), chart.words());
  }

  String paint() {
    out.text(0, 15, "font-weight=\"600\" fill=\"#222\"", chart.heading());
    band(1, 2, CloudChart.WIDE);
    band(3, 4, CloudChart.NARROW);
    grid();
    out.dots(CloudChart.DOT, DOT, 0.55, places(near(chart.dots(), List.of())));
    rings();
    chart.futures().forEach(f -> out.line(CloudChart.MODEL, 0.8, 0.45, false, places(shown(f))));
    List<double[]> middle = shown(chart.middle());
    out.line(CloudChart.MODEL, 2.4, 1, true, places(middle));
    axis();
    beyond();
    if (!middle.isEmpty()) {
      label(middle.get(middle.size() - 1));
    }
    return out.done();
  }

  private void grid() {
    for (double tick : up.ticks()) {
      out.stroke(SvgSheet.GRID, 0.8, LEFT, y(tick), WIDTH - RIGHT, y(tick));
      out.text(LEFT - 7, y(tick) + 4.5, END, ChartText.value(tick, up.high()));
    }
  }

  private void axis() {
    out.stroke(SvgSheet.AXIS, 1.2, LEFT, y(0), WIDTH - RIGHT, y(0));
    for (double tick : across.ticks()) {
      out.stroke(SvgSheet.AXIS, 1.2, x(tick), y(0), x(tick), y(0) + 4);
      out.text(x(tick), y(0) + 17, MIDDLE, ChartText.value(tick, across.high()));
    }
    out.text((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 7, MIDDLE, chart.across());
  }

  /** What the picture leaves out is said in it. */
  private void beyond() {
    int all = chart.dots().size() + chart.rings().size();
    int left = all - near(chart.dots(), chart.rings()).size();
    if (left > 0) {
      String text = left + (left == 1 ? " tree" : " trees") + " far above";
      out.text(WIDTH - RIGHT, 15, "font-size=\"11\" " + END, text);
    }
  }

  private List<double[]> near(List<double[]> dots, List<double[]> rings) {
    return Stream.concat(dots.stream(), rings.stream()).filter(p -> p[1] <= limit).toList();
  }

  private void band(int low, int high, String colour) {
    List<Double> corners = new ArrayList<>();
    for (double[] at : chart.band()) {
      corners.add(x(at[0]));
      corners.add(y(at[high]));
    }
    for (int i = chart.band().size() - 1; i >= 0; i--) {
      corners.add(x(chart.band().get(i)[0]));
      corners.add(y(chart.band().get(i)[low]));
    }
    out.area(colour, corners.stream().mapToDouble(d -> d).toArray());
  }

  private void rings() {
    for (double[] at : near(List.of(), chart.rings())) {
      if (at[0] <= across.high()) {
        out.append("<circle r=\"1.6\" fill=\"none\" stroke=\"#8d9792\" stroke-width=\"0.7\" cx=\"")
            .append(Marks.number(x(at[0])))
            .append("\" cy=\"")
            .append(Marks.number(y(at[1])))
            .append("\"/>\n");
      }
    }
  }

  /** The word beside the end of the middle line, on the side with room and on a white rim. */
  private void label(double[] end) {
    boolean right = x(end[0]) > LEFT + 60;
    String look =
        "font-weight=\"600\" paint-order=\"stroke\" stroke=\"#fff\" stroke-width=\"3\" fill=\""
            + CloudChart.MODEL
            + "\" text-anchor=\""
            + (right ? "end" : "start")
            + "\"";
    double above = y(end[1]) > TOP + 24 ? -9 : 18;
    out.text(x(end[0]) + (right ? 4 : -4), y(end[1]) + above, look, "model");
  }

  private List<double[]> shown(List<double[]> points) {
    return points.stream().filter(p -> p[0] <= across.high()).toList();
  }

  private double[] places(List<double[]> points) {
    double[] places = new double[2 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      places[2 * i] = x(points.get(i)[0]);
      places[2 * i + 1] = y(points.get(i)[1]);
    }
    return places;
  }

  private static double highest(Stream<List<double[]>> all, int axis) {
    return all.flatMap(List::stream).mapToDouble(p -> p[axis]).max().orElse(1);
  }

  private double x(double value) {
    return LEFT + (WIDTH - LEFT - RIGHT) * value / across.high();
  }

  /** A band that runs out at the top is cut there. */
  private double y(double value) {
    double share = Math.max(0, Math.min(1, value / up.high()));
    return TOP + (HEIGHT - TOP - BOTTOM) * (1 - share);
  }
}
