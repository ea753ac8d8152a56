package longbough.runner.validate.page;

import java.util.List;
import java.util.Locale;
import longbough.runner.report.Capital;
import longbough.runner.report.Page;
import longbough.runner.validate.Standing;
import longbough.runner.validate.Tally;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.experiment.Check;

/** The checks of one process as a table. */
final class CheckTable {
  private static final List<String> HEADINGS =
      List.of(
          "Check",
          "Tree, treatment, quantity",
          "Published",
          "Band",
          "Got",
          "Standing",
          "Direction that must hold",
          "Source");

  private CheckTable() {}

  static void write(Page page, String process, List<ValidationRow> rows) {
    String title = process.isEmpty() ? "Others" : Capital.of(process);
    String id = "process-" + process.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    page.open("section", "aria-labelledby", id);
    page.element("h2", title, "id", id);
    page.scroll().open("table", "class", "checks");
    Tally tally = Tally.of(rows);
    page.element("caption", tally.sentence());
    page.open("thead").open("tr");
    for (int i = 0; i < HEADINGS.size(); i++) {
      page.element("th", HEADINGS.get(i), "scope", "col", "class", "c" + i);
    }
    page.close().close();
    rows.forEach(row -> row(page, row));
    page.close().close().close();
  }

  /** A check and what there is to say of it stay together, so each has a body of its own. */
  private static void row(Page page, ValidationRow row) {
    Check check = row.check();
    page.open("tbody").open("tr");
    page.element("th", check.id(), "scope", "row", "id", "check-" + check.id());
    page.open("td").element("strong", check.subject());
    page.element("div", check.treatment().equals("none") ? "no treatment" : check.treatment())
        .element("div", check.quantity(), "class", "quantity");
    page.close();
    page.element("td", withUnit(check, check.published()));
    page.element("td", band(row));
    got(page, row);
    page.open("td", "class", "standing");
    StandingMark.alone(page, row.standing());
    page.text(row.standing().label()).close();
    page.element("td", check.direction());
    page.open("td", "class", "source").text(check.source());
    page.element("div", "basis: " + check.basis(), "class", "quantity").close();
    page.close();
    notes(page, row);
    page.close();
  }

  private static void got(Page page, ValidationRow row) {
    page.open("td");
    if (row.finding() == null) {
      page.text("\u2013");
    } else {
      page.text(row.finding().got());
      BandPicture.of(row).forEach(picture -> picture.write(page));
    }
    page.close();
  }

  private static void notes(Page page, ValidationRow row) {
    if (row.finding() == null) {
      return;
    }
    boolean explain = row.standing() != Standing.PASS && !row.why().isEmpty();
    page.open("tr", "class", "notes");
    page.open("td").close();
    page.open("td", "colspan", String.valueOf(HEADINGS.size() - 1));
    if (explain) {
      page.open("p", "class", "why").element("strong", "Why: ").text(row.why()).close();
    }
    page.element("p", "Set-up: " + row.finding().setUp());
    page.close().close();
  }

  private static String band(ValidationRow row) {
    Check check = row.check();
    boolean low = !Double.isNaN(check.low());
    boolean high = !Double.isNaN(check.high());
    if (low && high) {
      return withUnit(
          check, BandPicture.text(check.low()) + " to " + BandPicture.text(check.high()));
    }
    if (low) {
      return withUnit(check, "at least " + BandPicture.text(check.low()));
    }
    if (high) {
      return withUnit(check, "at most " + BandPicture.text(check.high()));
    }
    return row.finding() == null ? "\u2013" : row.finding().expected();
  }

  private static String withUnit(Check check, String text) {
    String unit = check.unit();
    boolean said =
        unit.isEmpty() || unit.equals("sign") || unit.equals("flag") || unit.equals("rank");
    return said || text.endsWith(unit) ? text : check.withUnit(text);
  }
}
