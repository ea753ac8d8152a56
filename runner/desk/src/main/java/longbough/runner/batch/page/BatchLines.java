package longbough.runner.batch.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.batch.Batch;
import longbough.runner.batch.Measure;
import longbough.runner.batch.NotPlayed;
import longbough.runner.batch.Outlook;
import longbough.runner.batch.TreeOutlook;

/** The ranked list on the terminal. */
public final class BatchLines {
  private static final int NAME = 22;
  private static final int SPECIES = 22;
  private static final int FIGURE = 10;
  private static final String INDENT = "     ";

  private BatchLines() {}

  /** The list, a line a tree and one with its reasons below where it is in trouble. */
  public static List<String> of(Batch batch) {
    List<String> lines = new ArrayList<>();
    if (batch.ranked().isEmpty()) {
      return lines;
    }
    StringBuilder head = new StringBuilder("     ");
    head.append(left("tree", NAME)).append(left("species", SPECIES)).append(left("dies %", FIGURE));
    head.append(left("reserve %", FIGURE)).append(left("strength", FIGURE));
    head.append(left("leaf", FIGURE));
    lines.add((head + "fares best").stripTrailing());
    String second = " ".repeat(NAME + SPECIES + INDENT.length() + FIGURE) + left("lowest", FIGURE);
    lines.add(second + left("lost %", FIGURE) + "missing %");
    int rank = 1;
    for (TreeOutlook tree : batch.ranked()) {
      lines.add(row(rank++, tree));
      if (TreeOutlook.passed(tree.alone()) > 0) {
        lines.add(INDENT + BatchWords.reasons(tree));
      }
    }
    return lines;
  }

  /** What was left out and why, a line a mistake. */
  public static List<String> leftOut(Batch batch) {
    List<String> lines = new ArrayList<>();
    for (NotPlayed one : batch.notPlayed()) {
      one.problems().forEach(problem -> lines.add(problem.message()));
    }
    return lines;
  }

  /** The outcome in a sentence. */
  public static String outcome(Batch batch) {
    return BatchWords.outcome(batch);
  }

  private static String row(int rank, TreeOutlook tree) {
    Outlook alone = tree.alone();
    StringBuilder line = new StringBuilder("%3d  ".formatted(rank));
    line.append(left(tree.tree().name(), NAME));
    line.append(left(tree.tree().input().species().commonName(), SPECIES));
    for (Measure measure : Measure.values()) {
      String mark = measure.passed(alone) ? " !" : "";
      line.append(left(BatchWords.percent(measure.value(alone)) + mark, FIGURE));
    }
    return line.append(BatchWords.best(tree)).toString();
  }

  private static String left(String text, int width) {
    String cut = text.length() < width ? text : text.substring(0, width - 2) + "\u2026";
    return cut + " ".repeat(width - cut.length());
  }
}
