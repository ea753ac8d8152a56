package longbough.runner.client.page;

import longbough.runner.report.CitedSources;
import longbough.runner.report.Page;
import longbough.shared.source.Citation;

/** Where the numbers come from, and what is needed to get the same report again. */
final class SourcePart implements Part {

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "sources");
    page.element("h2", input.say("sources.heading"), "id", "sources");
    page.element("p", input.say("sources.note", input.asked().climate().source()), "class", "note");
    page.open("ul", "class", "small two");
    for (Citation citation : CitedSources.of(input.asked())) {
      page.open("li").text(citation.text());
      if (!citation.note().isBlank()) {
        page.text(" \u2013 ").element("i", citation.note());
      }
      page.close();
    }
    page.close().close();
    page.element(
        "p",
        input.say(
            "again",
            input.provenance().version(),
            input.provenance().scenario(),
            input.amounts().years(input.comparison().years()),
            input.amounts().futures(input.comparison().members()),
            Long.toString(input.asked().seed()),
            input.provenance().scenarioHash(),
            input.provenance().parameterHash()),
        "class",
        "again");
  }
}
