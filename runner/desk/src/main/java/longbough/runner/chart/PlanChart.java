package longbough.runner.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Plan;
import longbough.runner.type.Lines;

/** Each plan by how far it gives what is asked and by what the tree suffers, with its hours. */
public final class PlanChart {
  private static final double TITLE = 22;
  private static final double ROOM = 960;
  private static final double LEFT = 110;
  private static final double TOP = 110;
  private static final double WIDTH = 600;
  private static final double HEIGHT = 300;
  private static final double PERCENT = 100;
  private static final double LEAST_SCALE = 0.2;
  private static final double NAME_WIDTH = 230;

  private final Advice advice;
  private final List<Shape> shapes = new ArrayList<>();

  private PlanChart(Advice advice) {
    this.advice = advice;
  }

  public static Scene of(Advice advice) {
    return new PlanChart(advice).scene();
  }

  private Scene scene() {
    String title = "What is gained, and what the tree pays: " + advice.input().title();
    String cut = String.join("", Lines.of(title, TITLE, ROOM, 1));
    shapes.add(new Shape.Text(20, 32, cut, TITLE, true, Shape.Anchor.START, Palette.TEXT));
    List<Plan> plans = new ArrayList<>(List.of(advice.firstIdea()));
    plans.addAll(advice.plans());
    double most = plans.stream().mapToDouble(plan -> plan.outcome().harm()).max().orElse(0);
    NiceScale scale = NiceScale.upTo(PERCENT * Math.max(LEAST_SCALE, most));
    PanelPlot plot = new PanelPlot(LEFT, TOP, WIDTH, HEIGHT, 0, PERCENT, scale.high(), shapes);
    plot.quiet(
        20,
        62,
        "Further right: more of what is asked. Further down: less harm.",
        Shape.Anchor.START);
    plot.quiet(
        20,
        84,
        "Harm: leaf lost, further deaths and strength lost, added up, %",
        Shape.Anchor.START);
    scale.ticks().forEach(tick -> plot.level(tick, ChartText.value(tick, scale.high())));
    plot.foot(
        Stream.iterate(0.0, tick -> tick <= PERCENT, tick -> tick + 20).toList(),
        "",
        "Fulfilled, %");
    List<List<String>> names = new ArrayList<>();
    double[] ys = new double[plans.size()];
    for (int series = 0; series < plans.size(); series++) {
      Plan plan = plans.get(series);
      double x = plot.x(PERCENT * plan.outcome().fulfilled());
      ys[series] = plot.y(PERCENT * plan.outcome().harm());
      Style leader = Style.line(RegimeStyle.of(series).colour(), 0.8).faint(0.5);
      plot.segment(x, ys[series], plot.right() + 8, ys[series], leader);
      plot.mark(x, ys[series], series);
      String hours = ", " + Math.round(plan.outcome().hours()) + " h";
      names.add(Lines.of(plan.regime().name() + hours, PanelPlot.TYPE, NAME_WIDTH, 2));
    }
    plot.names(names, ys);
    return new Scene(
        Scene.PAGE_WIDTH, (int) (TOP + HEIGHT + 62), title, description(plans), shapes);
  }

  private static String description(List<Plan> plans) {
    StringBuilder text = new StringBuilder("Fulfilment and harm in per cent.");
    for (Plan plan : plans) {
      text.append(' ').append(plan.regime().name()).append(": fulfilled ");
      text.append(Math.round(PERCENT * plan.outcome().fulfilled())).append(", harm ");
      text.append(Math.round(PERCENT * plan.outcome().harm())).append(", ");
      text.append(Math.round(plan.outcome().hours())).append(" crew hours.");
    }
    return text.toString();
  }
}
