package longbough.runner.limit.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import longbough.model.pruning.Season;
import longbough.runner.limit.LimitTable;
import longbough.runner.limit.Threshold;
import longbough.runner.limit.Way;

/** The tables on the terminal. */
public final class LimitLines {
  private static final int FIRST = 20;
  private static final int CELL = 26;
  private static final int NARROW = 15;

  private LimitLines() {}

  /** The lowest limit of each way in each season, then every line for the first way. */
  public static List<String> of(LimitTable table) {
    List<String> lines = new ArrayList<>();
    lines.add(table.input().title());
    lines.add(LimitWords.tree(table.input()));
    lines.add("");
    lines.add("Live foliage one visit can take, %, and the line that is passed first");
    lines.add(row("", table.seasons().stream().map(LimitLines::word).toList(), CELL));
    for (Way way : table.ways()) {
      List<String> cells =
          table.seasons().stream()
              .map(season -> LimitWords.binding(table.binding(way, season)))
              .toList();
      lines.add(row(way.label(), cells, CELL));
    }
    Way first = table.ways().get(0);
    lines.add("");
    lines.add("Every line for '" + first.label() + "', %");
    lines.add(row("", table.thresholds().stream().map(one -> lower(one.label())).toList(), NARROW));
    for (Season season : table.seasons()) {
      List<String> cells = table.limits(first, season).stream().map(LimitWords::dose).toList();
      lines.add(row(word(season), cells, NARROW));
    }
    List<String> turns = LimitWords.turns(table);
    if (!turns.isEmpty()) {
      lines.add("");
      lines.add(
          turns.size()
              + (turns.size() == 1 ? " line is" : " lines are")
              + " passed less often again at a larger dose; the page says where.");
    }
    return lines;
  }

  /** How to read them. */
  public static List<String> reading(LimitTable table) {
    List<String> reading = new ArrayList<>(LimitWords.reading(table));
    for (Threshold threshold : table.thresholds()) {
      reading.add(LimitWords.line(threshold));
    }
    return reading;
  }

  private static String row(String head, List<String> cells, int width) {
    StringBuilder line = new StringBuilder(left(head, FIRST));
    cells.forEach(cell -> line.append(left(cell, width)));
    return line.toString().stripTrailing();
  }

  private static String word(Season season) {
    return lower(season.name());
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  private static String left(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }
}
