package longbough.runner.report;

import java.util.List;

/** The whole page, valid both as HTML and as XML. */
public final class Report {

  private static final List<Section> SECTIONS =
      List.of(
          new TitleSection(),
          new VerdictSection(),
          new ReasonSection(),
          new TreeSection(),
          new RegimeSection(),
          new DrawingSection(),
          new FormulaSection(),
          new ChartSection(),
          new DeathSection(),
          new SummarySection(),
          new VisitSection(),
          new WarningSection(),
          new InspectionSection(),
          new CautionSection(),
          new AssumptionSection(),
          new SourceSection());

  private Report() {}

  public static String of(ReportInput input) {
    String title = input.comparison().input().title() + " \u2013 pruning compared";
    return PageFrame.of(title, "", page -> body(page, input));
  }

  private static void body(Page page, ReportInput input) {
    page.open("main");
    SECTIONS.forEach(section -> section.write(page, input));
    page.close();
    new FooterSection().write(page, input);
  }
}
