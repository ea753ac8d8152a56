package longbough.runner.validate.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import longbough.runner.chart.CloudChart;
import longbough.runner.report.Page;
import longbough.runner.validate.field.LogParabola;
import longbough.runner.validate.field.Relation;
import longbough.runner.validate.field.RelationTrial;
import longbough.runner.validate.field.SpeciesTrial;
import longbough.runner.validate.field.StreetTree;

/** The charts of one species: four small ones side by side. */
final class SpeciesFigure {
  private static final int STEPS = 48;

  private SpeciesFigure() {}

  static void write(Page page, SpeciesTrial trial) {
    String name = trial.species().scientificName();
    String id = "field-" + trial.species().id();
    page.open("section", "class", "species", "aria-labelledby", id);
    page.open("h3", "id", id).element("i", name).text(", " + trial.species().commonName()).close();
    page.element("p", about(trial), "class", "note");
    page.open("div", "class", "clouds");
    for (RelationTrial relation : trial.relations()) {
      page.open("figure").markup(chart(trial, relation).svg());
      page.element("figcaption", caption(relation)).close();
    }
    page.close().close();
  }

  private static String about(SpeciesTrial trial) {
    return trial.trees()
        + " trees measured in "
        + String.join(", ", trial.cities())
        + ". Model: climate "
        + trial.grown().climate().replace('_', ' ')
        + ", "
        + Math.round(trial.grown().survival() * trial.grown().futures().size())
        + " of "
        + trial.grown().futures().size()
        + " trees alive after 60 years.";
  }

  private static String caption(RelationTrial trial) {
    if (trial.points() == 0) {
      return "n = " + trial.fit().n() + "; no size of the model lies in the measured range";
    }
    return "n = "
        + trial.fit().n()
        + "; model in the 50\u00a0% band "
        + percent(trial.share50())
        + ", in the 95\u00a0% band "
        + percent(trial.share95())
        + "; bias "
        + signed(trial.lnBias());
  }

  static String percent(double share) {
    return Math.round(100 * share) + "\u00a0%";
  }

  static String signed(double ln) {
    String text = String.format(Locale.ROOT, "%+.2f", ln).replace('-', '\u2212');
    return text.equals("\u22120.00") ? "+0.00" : text;
  }

  private static CloudChart chart(SpeciesTrial trial, RelationTrial relation) {
    Relation r = relation.relation();
    return new CloudChart(
        "field-" + trial.species().id() + "-" + r.name().toLowerCase(Locale.ROOT),
        r.title(),
        r.unit(),
        r.across(),
        points(relation.measured(), r, r::counts),
        points(relation.measured(), r, tree -> !r.counts(tree)),
        band(relation.fit()),
        trial.grown().futures().stream().map(f -> points(f, r, tree -> true)).toList(),
        points(trial.grown().middle(), r, tree -> true),
        words(trial, relation));
  }

  private static List<double[]> points(
      List<StreetTree> trees, Relation relation, Predicate<StreetTree> which) {
    return trees.stream()
        .filter(which)
        .map(tree -> new double[] {relation.x(tree), relation.y(tree)})
        .toList();
  }

  private static List<double[]> band(LogParabola fit) {
    List<double[]> band = new ArrayList<>();
    for (int step = 0; step <= STEPS; step++) {
      double x = fit.least() + (fit.most() - fit.least()) * step / STEPS;
      double wide = fit.halfWidth(x, RelationTrial.MOST);
      double narrow = fit.halfWidth(x, RelationTrial.HALF);
      double ln = fit.ln(x);
      band.add(
          new double[] {
            x,
            Math.exp(ln - wide),
            Math.exp(ln + wide),
            Math.exp(ln - narrow),
            Math.exp(ln + narrow)
          });
    }
    return band;
  }

  private static String words(SpeciesTrial trial, RelationTrial relation) {
    LogParabola fit = relation.fit();
    Relation r = relation.relation();
    double at = (fit.least() + fit.most()) / 2;
    double half = fit.halfWidth(at, RelationTrial.HALF);
    double most = fit.halfWidth(at, RelationTrial.MOST);
    return String.format(
        Locale.ROOT,
        "%s, %s of %s by %s: %d measured trees. At %.0f half of them lie between %.3g and %.3g %s,"
            + " 95 %% between %.3g and %.3g. %s",
        r.title(),
        r.unit(),
        trial.species().scientificName(),
        r.across().toLowerCase(Locale.ROOT),
        fit.n(),
        at,
        Math.exp(fit.ln(at) - half),
        Math.exp(fit.ln(at) + half),
        r.unit(),
        Math.exp(fit.ln(at) - most),
        Math.exp(fit.ln(at) + most),
        caption(relation));
  }
}
