package longbough.runner.report;

import java.util.TreeSet;
import longbough.model.ModelSources;
import longbough.shared.source.Bibliography;
import longbough.shared.source.Citation;
import longbough.shared.source.Sourced;

/** Where the numbers come from. */
final class SourceSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "sources");
    page.element("h2", "Sources", "id", "sources");
    page.element("p", "Climate: " + input.comparison().input().climate().source());
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
