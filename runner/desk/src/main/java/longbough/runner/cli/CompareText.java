package longbough.runner.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longbough.runner.compare.RegimeResult;
import longbough.runner.compare.Summary;
import longbough.runner.table.TerminalTable;
import longbough.runner.verdict.Chain;
import longbough.runner.verdict.LimitWarnings;
import longbough.runner.verdict.Verdict;

/** What compare says on the terminal: the table, the verdict, and why. */
final class CompareText {
  private static final int WIDTH = 100;
  private static final int LINKS = 6;

  private CompareText() {}

  static void print(Summary summary, Path report, PrintWriter out) {
    say(out, "", summary.comparison().input().title());
    out.println();
    out.println(PrintableText.of(TerminalTable.of(summary)));
    out.println();
    say(out, "", TerminalTable.legend(summary));
    out.println();
    Verdict.of(summary).forEach(sentence -> say(out, "* ", sentence));
    out.println();
    say(out, "", "Why, in the median future:");
    summary.comparison().regimes().forEach(result -> say(out, "* ", why(result)));
    limits(summary, out);
    out.println();
    say(
        out,
        "",
        "A simulated probability is never a safety clearance; a qualified arborist inspects first."
            + " Power lines, permits and wildlife: see the cautions in the report.");
    say(out, "", "Report: " + report);
    out.flush();
  }

  private static void limits(Summary summary, PrintWriter out) {
    List<String> counts = new ArrayList<>();
    for (RegimeResult result : summary.comparison().regimes()) {
      int passed = LimitWarnings.of(result).size();
      if (passed > 0) {
        counts.add(Verdict.quoted(result.name()) + " " + passed);
      }
    }
    if (!counts.isEmpty()) {
      out.println();
      say(
          out,
          "",
          "Published limits passed: "
              + String.join(", ", counts)
              + "; the report says which and when.");
    }
  }

  private static String why(RegimeResult result) {
    List<Chain.Link> links = Chain.telling(result.medianFuture().events(), LINKS);
    String chain = String.join("; ", links.stream().map(Chain.Link::text).toList());
    return Verdict.quoted(result.name())
        + ": "
        + (chain.isEmpty() ? "nothing out of the ordinary" : chain)
        + ".";
  }

  /** One paragraph, its lines broken between words and set in under its bullet. */
  private static void say(PrintWriter out, String bullet, String text) {
    StringBuilder line = new StringBuilder(bullet);
    int empty = bullet.length();
    for (String word : PrintableText.of(text).split("\\s+")) {
      if (line.length() > empty && line.length() + 1 + word.length() > WIDTH) {
        out.println(line);
        line = new StringBuilder(" ".repeat(empty));
      }
      line.append(line.length() > empty ? " " : "").append(word);
    }
    out.println(line);
  }
}
