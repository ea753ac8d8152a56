package longbough.runner.validate.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import longbough.runner.chart.CloudChart;
import longbough.runner.chart.SpreadChart;
import longbough.runner.report.Page;
import longbough.runner.validate.field.FieldReport;
import longbough.runner.validate.field.Spread;
import longbough.runner.validate.field.SpreadTrial;
import longbough.runner.validate.field.StreetTrees;

/** The model beside open measurements, or why that is left out. */
final class FieldSection {

  private FieldSection() {}

  static void write(Page page, FieldReport report) {
    page.open("section", "aria-labelledby", "field", "class", "field-part");
    page.element("h2", "Beside open measurements", "id", "field");
    report.leftOut().forEach(why -> page.element("p", why, "class", "left-out"));
    if (!report.species().isEmpty()) {
      species(page, report);
    }
    if (!report.spreads().isEmpty()) {
      spreads(page, report.spreads());
    }
    page.close();
  }

  private static void species(Page page, FieldReport report) {
    page.element(
        "p",
        report.species().size()
            + " species were measured often enough in streets and parks. The model sets each out at"
            + " 5 cm of trunk in the open, in the climate where most of its trees were measured, and"
            + " leaves it alone for 60 years, ten times. A middling tree should run through the"
            + " middle of the cloud: nearly always in the wide band and mostly in the narrow one.");
    page.element(
        "p",
        "Bands: ln y = a + b ln x + c (ln x)\u00b2 by least squares over the measured trees of the"
            + " species from 5 cm of trunk (from 3 years for age), with the interval in which a"
            + " further tree lies with 50 or 95 % chance. Only the measured range counts. Sizes of"
            + " the species files come from the same trees; what is tried is whether growth keeps to"
            + " them, and how fast. Age counts from planting, and the model's trees start at the age"
            + " at which the species' mean tree is 5 cm thick. Leaf areas are themselves estimates;"
            + " those of Minneapolis follow another method and are shown as rings, not counted."
            + " Albuquerque and Modesto are kept apart for a later trial and are in no figure here.",
        "class",
        "note");
    page.element("p", "Measurements: " + StreetTrees.SOURCE + ".", "class", "note");
    FieldTable.write(page, report.species());
    legend(page);
    report.species().forEach(trial -> SpeciesFigure.write(page, trial));
  }

  private static void legend(Page page) {
    page.open("ul", "class", "cloud-key");
    key(page, "dot", CloudChart.DOT, "a measured tree");
    key(page, "block", CloudChart.NARROW, "half of the trees");
    key(page, "block", CloudChart.WIDE, "95 % of the trees");
    key(page, "stroke", CloudChart.MODEL, "model: middle tree (bold) and each of ten futures");
    page.close();
  }

  private static void key(Page page, String shape, String colour, String text) {
    page.open("li");
    page.open("span", "class", shape, "style", "background:" + colour, "aria-hidden", "true");
    page.close().text(text).close();
  }

  private static void spreads(Page page, List<SpreadTrial> trials) {
    page.element("h3", "How measured values spread, and the model's");
    page.element(
        "p",
        "Thin bar: from the 5 % to the 95 % point of the measured trees; thick bar: the middle half;"
            + " upright: the median; diamond: the model.",
        "class",
        "note");
    page.open("div", "class", "spreads");
    for (SpreadTrial trial : trials) {
      page.open("figure").markup(chart(trial).svg());
      page.element("figcaption", trial.how() + " Measurements: " + trial.source() + ".").close();
    }
    page.close();
  }

  private static SpreadChart chart(SpreadTrial trial) {
    List<SpreadChart.Row> rows =
        trial.groups().stream()
            .map(g -> new SpreadChart.Row(g.name(), g.note(), g.n(), g.points(), g.model()))
            .toList();
    String words =
        trial.groups().stream().map(FieldSection::words).collect(Collectors.joining(" "));
    return new SpreadChart("spread-" + trial.id(), trial.title(), trial.unit(), rows, words);
  }

  private static String words(Spread group) {
    String model =
        Double.isNaN(group.model())
            ? "no value of the model"
            : String.format(
                Locale.ROOT,
                "model %.3g, %s",
                group.model(),
                group.holds() ? "within these" : "outside these");
    return String.format(
        Locale.ROOT,
        "%s: median %.3g of %d, nine of ten between %.3g and %.3g; %s.",
        group.name(),
        group.points()[2],
        group.n(),
        group.points()[0],
        group.points()[4],
        model);
  }
}
