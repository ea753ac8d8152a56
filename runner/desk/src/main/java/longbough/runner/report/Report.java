package longbough.runner.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The whole page, valid both as HTML and as XML. */
public final class Report {

  /** Nothing is loaded from anywhere, and no script runs, whatever a scenario holds. */
  private static final String POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

  private static final List<Section> SECTIONS =
      List.of(
          new TitleSection(),
          new VerdictSection(),
          new ReasonSection(),
          new TreeSection(),
          new RegimeSection(),
          new DrawingSection(),
          new ChartSection(),
          new SummarySection(),
          new VisitSection(),
          new WarningSection(),
          new InspectionSection(),
          new CautionSection(),
          new AssumptionSection(),
          new SourceSection());

  private Report() {}

  public static String of(ReportInput input) {
    Page page = new Page();
    page.markup("<!DOCTYPE html>\n");
    page.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en", "xml:lang", "en");
    page.open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", POLICY);
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", input.comparison().input().title() + " \u2013 pruning compared");
    page.open("style").markup(style()).close();
    page.close();
    page.open("body");
    page.open("main");
    SECTIONS.forEach(section -> section.write(page, input));
    page.close();
    new FooterSection().write(page, input);
    return page.close().close().done();
  }

  private static String style() {
    try (InputStream in = Report.class.getResourceAsStream("report.css")) {
      return "\n" + new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
