package longbough.runner.report;

import java.util.List;
import longbough.model.SimulationInput;
import longbough.shared.source.Citation;

/** Where the numbers come from. */
final class SourceSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "sources");
    page.element("h2", "Sources", "id", "sources");
    climate(page, input.comparison().input());
    List<Citation> citations = CitedSources.of(input.comparison().input());
    if (!citations.isEmpty()) {
      page.open("ul", "class", "sources");
      citations.forEach(citation -> citation(page, citation));
      page.close();
    }
    page.close();
  }

  private static void climate(Page page, SimulationInput asked) {
    String source = asked.climate().source();
    if (asked.filledIn().stream().anyMatch(line -> line.contains(source))) {
      page.element("p", "Climate: as said under assumptions.");
    } else {
      page.element("p", "Climate: " + source);
    }
  }

  private static void citation(Page page, Citation citation) {
    page.open("li").text(citation.text());
    if (!citation.note().isBlank()) {
      page.text(" \u2013 ").element("em", citation.note());
    }
    page.close();
  }
}
