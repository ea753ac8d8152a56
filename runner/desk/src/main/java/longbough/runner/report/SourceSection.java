package longbough.runner.report;

import java.util.TreeSet;
import longbough.model.ModelSources;
import longbough.model.SimulationInput;
import longbough.shared.source.Bibliography;
import longbough.shared.source.Citation;
import longbough.shared.source.Sourced;

/** Where the numbers come from. */
final class SourceSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "sources");
    page.element("h2", "Sources", "id", "sources");
    climate(page, input.comparison().input());
    TreeSet<String> keys = new TreeSet<>(ModelSources.keys(input.comparison().input()));
    for (Sourced row : input.comparison().input().parameters().rows()) {
      if (!row.citation().isEmpty()) {
        keys.add(row.citation());
      }
    }
    if (!keys.isEmpty()) {
      page.open("ul", "class", "sources");
      keys.forEach(key -> citation(page, key));
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

  private static void citation(Page page, String key) {
    Bibliography all = Bibliography.load();
    if (!all.has(key)) {
      page.element("li", key);
      return;
    }
    Citation citation = all.citation(key);
    page.open("li").text(citation.text());
    if (!citation.note().isBlank()) {
      page.text(" \u2013 ").element("em", citation.note());
    }
    page.close();
  }
}
