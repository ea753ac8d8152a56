package longbough.runner.update.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.compare.Band;
import longbough.runner.update.ForecastFigure;
import longbough.runner.update.Outlook;
import longbough.runner.update.Updated;
import longbough.runner.verdict.Figures;

/** An update on the terminal. */
public final class UpdateLines {
  private static final int NAME = 36;
  private static final int VALUE = 12;
  private static final int BAND = 28;

  private UpdateLines() {}

  public static List<String> head(Updated updated) {
    return List.of(
        updated.input().title(), UpdateWords.tree(updated) + ".", UpdateWords.followed(updated));
  }

  /** What was measured beside what was foretold. */
  public static List<String> visit(Updated updated) {
    List<String> lines = new ArrayList<>();
    lines.add(
        left("year", VALUE / 2)
            + left("figure", NAME)
            + left("measured", VALUE)
            + left("foretold (nine in ten)", BAND)
            + "as far out or more");
    for (Outlook.Figure figure : updated.outlook().figures()) {
      lines.add(
          left(Integer.toString(figure.measured().year()), VALUE / 2)
              + left(figure.measured().quantity().label(), NAME)
              + left(UpdateWords.number(figure.measured().value()), VALUE)
              + left(UpdateWords.range(figure), BAND)
              + UpdateWords.share(figure.pValue()));
    }
    String alive =
        updated.visit().dead()
            ? "found dead in year " + updated.visit().deadByYear()
            : "alive in year " + updated.visit().lastAliveYear();
    lines.add(alive + ", as in " + UpdateWords.share(updated.outlook().fitting()) + " of futures");
    return lines;
  }

  public static List<String> weighing(Updated updated) {
    return UpdateWords.weighing(updated);
  }

  /** The last year of every regime, before and after. */
  public static List<String> forecast(Updated updated) {
    List<String> lines = new ArrayList<>();
    int year = updated.input().years();
    lines.add(left("In year " + year, NAME) + left("before", BAND) + left("after", BAND) + "width");
    for (int regime = 0; regime < updated.input().regimes().size(); regime++) {
      lines.add(updated.regime(regime));
      for (ForecastFigure figure : ForecastFigure.values()) {
        Band before = updated.before(figure, regime);
        Band after = updated.after(figure, regime);
        String unit = figure.unit(updated.input().crew().currency());
        lines.add(
            (left("  " + figure.label() + (unit.isEmpty() ? "" : ", " + unit), NAME)
                    + left(band(figure, before, year), BAND)
                    + left(band(figure, after, year), BAND)
                    + width(figure, before, after, year))
                .stripTrailing());
      }
    }
    return lines;
  }

  public static List<String> verdict(Updated updated) {
    return UpdateWords.verdict(updated);
  }

  public static List<String> reading(Updated updated) {
    return updated.narrowed() ? UpdateWords.reading(updated) : List.of();
  }

  static String band(ForecastFigure figure, Band band, int year) {
    double factor = figure.percent() ? 100 : 1;
    String middle = Figures.number(factor * band.median()[year]);
    return figure.share() || Double.isNaN(band.median()[year])
        ? middle
        : middle
            + " ("
            + Figures.number(factor * band.low()[year])
            + " to "
            + Figures.number(factor * band.high()[year])
            + ")";
  }

  /** The new band's width over the old one's. */
  static String width(ForecastFigure figure, Band before, Band after, int year) {
    double old = before.high()[year] - before.low()[year];
    double now = after.high()[year] - after.low()[year];
    return figure.share() || !(old > 0) || Double.isNaN(now) ? "" : Figures.percent(now / old);
  }

  private static String left(String text, int width) {
    String cut = text.length() < width ? text : text.substring(0, width - 2) + "\u2026";
    return cut + " ".repeat(Math.max(1, width - cut.length()));
  }
}
