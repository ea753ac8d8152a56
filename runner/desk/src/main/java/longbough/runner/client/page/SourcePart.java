package longbough.runner.client.page;

import java.text.Collator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import longbough.runner.report.BriefReference;
import longbough.runner.report.CitedSources;
import longbough.runner.report.Page;
import longbough.shared.source.Citation;

/** Where the numbers come from, and what is needed to get the same report again. */
final class SourcePart implements Part {
  private static final Set<String> READ = Set.of("", "read", "Read", "read.", "Read.");

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "sources");
    page.element("h2", input.say("sources.heading"), "id", "sources");
    String climate = input.say("sources.climate", input.asked().climate().source());
    page.element("p", climate, "class", input.paper() ? "small" : "note");
    List<Citation> sources = CitedSources.of(input.asked());
    if (input.paper()) {
      brief(page, input, sources);
    } else {
      whole(page, sources);
    }
    page.close();
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

  private static void whole(Page page, List<Citation> sources) {
    page.open("ul", "class", "small two");
    for (Citation source : sources) {
      page.open("li").text(source.text());
      if (!source.note().isBlank()) {
        page.text(" \u2013 ").element("i", source.note());
      }
      page.close();
    }
    page.close();
  }

  private static String starred(Citation source) {
    String star = READ.contains(source.note()) ? "" : "\u00a0*";
    return BriefReference.of(source.text()) + star;
  }

  /** On paper a star stands for a note that says more than that the source was read. */
  private static void brief(Page page, ClientInput input, List<Citation> sources) {
    String all =
        sources.stream()
            .map(SourcePart::starred)
            .distinct()
            .sorted(Collator.getInstance(Locale.ROOT))
            .collect(Collectors.joining(" \u00b7 "));
    page.element("p", all, "class", "small");
    page.element("p", input.say("sources.star"), "class", "note");
  }
}
