package longbough.runner.client.page;

import java.util.List;
import longbough.runner.report.PageFrame;

/** The whole report, valid both as HTML and as XML. */
public final class ClientReport {
  private static final List<Part> PARTS =
      List.of(
          new HeadPart(),
          new VerdictPart(),
          new TreePart(),
          new PlanPart(),
          new ChartPart(),
          new WhyPart(),
          new SchedulePart(),
          new InspectPart(),
          new AssumptionPart(),
          new CautionPart(),
          new SourcePart());

  private ClientReport() {}

  /** For the screen, and for printing out of a browser. */
  public static String screen(ClientInput input) {
    return page(input, style("client.css") + style("client-screen.css"));
  }

  /** For paper: the same body, set on A4 sheets with a running head. */
  public static String paper(ClientInput input) {
    String style = style("client.css") + style("client-paper.css") + PaperStyle.of(input);
    return page(input.onPaper(), style);
  }

  private static String page(ClientInput input, String style) {
    String description =
        input.say(
            "head.description",
            input.asked().species().commonName(),
            input.amounts().number(input.plans().size()),
            input.amounts().years(input.comparison().years()));
    return PageFrame.of(
        input.client().language(),
        input.title(),
        description,
        style,
        page -> {
          page.open("main");
          PARTS.forEach(part -> part.write(page, input));
          page.close();
        });
  }

  private static String style(String file) {
    return PageFrame.style(ClientReport.class, file);
  }
}
