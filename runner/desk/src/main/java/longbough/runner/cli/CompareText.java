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
  private static final int LINKS = 6;

  /** What stands under every result on the terminal. */
  static final String CAUTION =
      "A simulated probability is never a safety clearance; a qualified arborist inspects first."
          + " Power lines, permits and wildlife: see the cautions in the report.";

  private CompareText() {}

  static void print(Summary summary, Path report, PrintWriter out) {
    Paragraph.print(out, "", summary.comparison().input().title());
    out.println();
    out.println(PrintableText.of(TerminalTable.of(summary)));
    out.println();
    Paragraph.print(out, "", TerminalTable.legend(summary));
    out.println();
    Verdict.of(summary).forEach(sentence -> Paragraph.print(out, "* ", sentence));
    out.println();
    Paragraph.print(out, "", "Why, in the median future:");
    summary.comparison().regimes().forEach(result -> Paragraph.print(out, "* ", why(result)));
    limits(summary, out);
    out.println();
    Paragraph.print(out, "", CAUTION);
    Paragraph.print(out, "", "Report: " + report);
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
      Paragraph.print(
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
}
