package longbough.runner.table;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.compare.Metric;
import longbough.runner.compare.Summary;
import longbough.runner.verdict.Figures;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * The summary as it stands on the terminal: one row a regime, means over the futures. The only
 * class that needs the table library, so that nothing else waits for it to load.
 */
public final class TerminalTable {

  private static final int NAME_CHARS = 28;

  private record Heading(Metric metric, String text) {}

  private static final List<Heading> HEADINGS =
      List.of(
          new Heading(Metric.ALIVE_AT_END, "alive %"),
          new Heading(Metric.LEAF_AREA_MEAN_M2, "leaf m²"),
          new Heading(Metric.RESERVE_FRACTION_LOWEST, "reserve %"),
          new Heading(Metric.SPROUT_COUNT_HIGHEST, "sprouts"),
          new Heading(Metric.STRENGTH_LOSS_FRACTION_END, "lost strength %"),
          new Heading(Metric.FAILURE_PROBABILITY_END, "failure %"));

  private TerminalTable() {}

  /** What the columns mean, in one line or two. */
  public static String legend(Summary summary) {
    return "Means over "
        + summary.comparison().members()
        + " futures: alive, trunk strength lost where it is weakest and yearly chance of failure after "
        + summary.comparison().years()
        + " years;\nleaf area of all years; lowest reserve and most sprouts of any year; cost, discounted.";
  }

  public static String of(Summary summary) {
    List<StringColumn> columns = new ArrayList<>();
    int regimes = summary.comparison().regimes().size();
    StringColumn names = StringColumn.create("regime");
    List<String> cut = new ArrayList<>();
    for (int regime = 0; regime < regimes; regime++) {
      cut.add(cut(summary.comparison().regimes().get(regime).name()));
    }
    int widest = cut.stream().mapToInt(String::length).max().orElse(0);
    // The library sets every column flush right; names read better flush left.
    cut.forEach(name -> names.append(name + " ".repeat(widest - name.length())));
    columns.add(names);
    HEADINGS.forEach(heading -> columns.add(column(summary, heading)));
    String currency = summary.comparison().input().crew().currency();
    columns.add(column(summary, new Heading(Metric.COST_DISCOUNTED, "cost " + currency)));
    Table table = Table.create("", columns.toArray(new StringColumn[0]));
    // The table has no name, yet the library prints an empty line for it.
    return table.printAll().stripTrailing().replaceFirst("^\\s*\n", "");
  }

  private static String cut(String name) {
    return name.length() <= NAME_CHARS
        ? name
        : name.substring(0, name.offsetByCodePoints(0, name.codePointCount(0, NAME_CHARS - 1)))
            + "\u2026";
  }

  private static StringColumn column(Summary summary, Heading heading) {
    StringColumn column = StringColumn.create(heading.text());
    for (int regime = 0; regime < summary.comparison().regimes().size(); regime++) {
      column.append(Figures.bare(heading.metric(), summary.get(regime, heading.metric()).mean()));
    }
    return column;
  }
}
