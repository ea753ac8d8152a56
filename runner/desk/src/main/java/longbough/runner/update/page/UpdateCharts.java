package longbough.runner.update.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longbough.runner.chart.NarrowedChart;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.update.ForecastFigure;
import longbough.runner.update.Measured;
import longbough.runner.update.Quantity;
import longbough.runner.update.Updated;

/** A picture for each figure of the forecast. */
final class UpdateCharts {
  private static final Map<ForecastFigure, Quantity> MEASURED =
      Map.of(
          ForecastFigure.TRUNK_DIAMETER_CM, Quantity.TRUNK_DIAMETER,
          ForecastFigure.HEIGHT_M, Quantity.HEIGHT);

  private UpdateCharts() {}

  /** By figure, in the order of the figures. */
  static Map<ForecastFigure, Scene> of(Updated updated) {
    Map<ForecastFigure, Scene> charts = new EnumMap<>(ForecastFigure.class);
    for (ForecastFigure figure : ForecastFigure.values()) {
      charts.put(figure, chart(updated, figure));
    }
    return charts;
  }

  private static Scene chart(Updated updated, ForecastFigure figure) {
    List<NarrowedChart.Panel> panels = new ArrayList<>();
    for (int regime = 0; regime < updated.input().regimes().size(); regime++) {
      boolean followed = regime == updated.followed();
      panels.add(
          new NarrowedChart.Panel(
              updated.regime(regime) + (followed ? " (followed)" : ""),
              updated.before(figure, regime),
              updated.after(figure, regime),
              followed ? points(updated, MEASURED.get(figure)) : List.of()));
    }
    return NarrowedChart.of(
        new NarrowedChart.Figure(
            figure.label(),
            figure.unit(updated.input().crew().currency()),
            figure.percent(),
            figure.share(),
            panels,
            updated.input().years(),
            updated.visit().lastYear()));
  }

  private static List<NarrowedChart.Point> points(Updated updated, Quantity quantity) {
    List<NarrowedChart.Point> points = new ArrayList<>();
    for (Measured measured : updated.visit().figures()) {
      if (measured.quantity() == quantity) {
        points.add(
            new NarrowedChart.Point(
                measured.year(), measured.value(), updated.readingError(measured)));
      }
    }
    return points;
  }
}
