package longbough.runner.gentler.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Plan;

/** What stands on the terminal. */
public final class AdviceLines {
  private static final int FIRST = 28;
  private static final int GAP = 2;

  private AdviceLines() {}

  /** Tree, wishes and the table of plans; each a line as it stands. */
  public static List<String> table(Advice advice) {
    List<String> lines = new ArrayList<>();
    lines.add(advice.input().title());
    lines.add(AdviceWords.tree(advice.input()));
    lines.add("");
    lines.add(
        "Asked for by year "
            + advice.wishes().byYear()
            + " and kept until year "
            + advice.wishes().untilYear()
            + ":");
    AdviceWords.asked(advice).forEach(line -> lines.add("  " + line));
    lines.add("");
    List<String> heads = AdviceTable.heads(advice);
    lines.add(row("", heads, heads));
    for (Plan plan : advice.all()) {
      lines.add(row(plan.regime().name(), AdviceTable.cells(plan.outcome()), heads));
    }
    return lines;
  }

  /** What is to be said, then each plan in a sentence. */
  public static List<String> sentences(Advice advice) {
    List<String> sentences = new ArrayList<>(AdviceWords.verdict(advice));
    advice.plans().forEach(plan -> sentences.add(AdviceWords.sentence(plan, advice)));
    sentences.add(AdviceWords.sentence(advice.firstIdea(), advice));
    return sentences;
  }

  /** How to read it. */
  public static List<String> reading(Advice advice) {
    return AdviceWords.reading(advice);
  }

  private static String row(String name, List<String> cells, List<String> heads) {
    String cut = name.length() < FIRST ? name : name.substring(0, FIRST - 2) + "\u2026";
    StringBuilder line = new StringBuilder(cut + " ".repeat(FIRST - cut.length()));
    for (int i = 0; i < cells.size(); i++) {
      int width = heads.get(i).length() + GAP;
      line.append(" ".repeat(Math.max(1, width - cells.get(i).length()))).append(cells.get(i));
    }
    return line.toString();
  }
}
