package longbough.runner.validate.page;

import java.util.List;
import longbough.runner.report.Page;
import longbough.runner.report.PageFrame;
import longbough.runner.validate.Standing;
import longbough.runner.validate.Tally;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.ValidationTable;
import longbough.runner.validate.field.FieldReport;

/** The whole page: how the model stands against the published checks. */
public final class ValidationPage {

  private ValidationPage() {}

  /** The page with what was found beside open measurements. */
  public static String of(List<ValidationRow> rows, FieldReport field, String version) {
    String style = PageFrame.style(ValidationPage.class, "validation.css");
    return PageFrame.of(
        "Longbough against published checks", style, page -> body(page, rows, field, version));
  }

  private static void body(Page page, List<ValidationRow> rows, FieldReport field, String version) {
    page.open("main");
    page.open("header");
    page.element("h1", "Longbough against published checks");
    List<ValidationRow> given = rows.stream().filter(r -> !r.own()).toList();
    List<ValidationRow> own = rows.stream().filter(ValidationRow::own).toList();
    page.element("p", Tally.of(given).sentence(), "class", "lead");
    page.close();
    counts(page, Tally.of(given));
    legend(page);
    Tally.byProcess(given).forEach((process, group) -> CheckTable.write(page, process, group));
    if (!own.isEmpty()) {
      CheckTable.write(page, ValidationTable.OWN_HEADING, own);
    }
    FieldSection.write(page, field);
    page.close();
    page.open("footer");
    page.element(
        "p",
        "Longbough "
            + version
            + ". Made by \u2018longbough validate --html\u2019; the same version"
            + " gives the same page.");
    page.close();
  }

  private static void counts(Page page, Tally tally) {
    page.open("ul", "class", "counts", "aria-label", "How many checks stand how");
    for (Standing standing : Standing.values()) {
      page.open("li");
      StandingMark.alone(page, standing);
      page.element("strong", String.valueOf(tally.count(standing)));
      page.text(" " + standing.label()).close();
    }
    page.close();
  }

  private static void legend(Page page) {
    page.element(
        "p",
        "Each check is a small experiment that a source reports, played with the model. It passes where"
            + " the result lies in the band around the published figure; a miss is outside the band but"
            + " on the side that the source found; wrong way is not even that. A miss stays here, with"
            + " its explanation.");
    page.element(
        "p",
        "In the pictures the green bar is the band, running off the edge where it has only one end; the"
            + " thin upright line is the published figure where it is a single number; the mark is what"
            + " the model gave (a triangle is outside). Several numbers stand below each other in"
            + " their order. Basis: how we know the figure (\u2018read\u2019 in the source,"
            + " \u2018secondhand\u2019 in another text, \u2018sign\u2019 only the direction,"
            + " \u2018memory\u2019 recalled).",
        "class",
        "note");
  }
}
