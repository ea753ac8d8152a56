package longbough.runner.assumption.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.AssumptionWords;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.Shift;
import longbough.runner.chart.AssumptionChart;

/** The tables on the terminal, ready to print, and the paragraphs around them. */
public final class AssumptionLines {
  private static final String ROW = "%3s  %-44s %-26s %-15s %7s  %-10s %s";
  private static final String GROUP = "%-12s %10s %8s %14s  %s";

  private AssumptionLines() {}

  /** What was played and what the verdict is as things stand. */
  public static List<String> head(Assumptions all) {
    List<String> paragraphs = new ArrayList<>();
    paragraphs.add(all.input().title());
    paragraphs.add(Sentences.played(all));
    paragraphs.add("As things stand, " + String.join("; ", Sentences.preferred(all)) + ".");
    return paragraphs;
  }

  /** The heaviest parameters, a line each. */
  public static List<String> table(Assumptions all) {
    List<String> lines = new ArrayList<>();
    lines.add(
        ROW.formatted("", "parameter", "range", "basis", "effect", "on", "flag").stripTrailing());
    List<Assumption> first = all.first(AssumptionChart.SHOWN);
    List<Assumption> flagged = all.flagged();
    for (int row = 0; row < first.size(); row++) {
      Assumption one = first.get(row);
      Shift shift = one.strongest();
      String basis = one.parameter().basis().label();
      String flag = flagged.contains(one) ? "flag: " + basis : "";
      String turns = one.turns().isEmpty() ? "" : "turns the verdict";
      String remark = flag + (flag.isEmpty() || turns.isEmpty() ? "" : ", ") + turns;
      lines.add(
          ROW.formatted(
                  row + 1,
                  one.parameter().name(),
                  AssumptionWords.range(one.parameter()),
                  basis,
                  AssumptionWords.effect(one.weight()),
                  AssumptionWords.measure(shift.metric()),
                  remark)
              .stripTrailing());
    }
    return lines;
  }

  /** The groups, a line each. */
  public static List<String> groups(Assumptions all) {
    List<String> lines = new ArrayList<>();
    lines.add(
        GROUP
            .formatted("group", "parameters", "move it", "not published", "heaviest")
            .stripTrailing());
    for (Assumptions.Group group : all.groups()) {
      Assumption heaviest = group.heaviest();
      String heavy =
          heaviest.weight() > 0
              ? heaviest.parameter().name() + " " + AssumptionWords.effect(heaviest.weight())
              : "";
      lines.add(
          GROUP
              .formatted(
                  group.name(),
                  group.members().size(),
                  group.moving(),
                  group.movingUnpublished(),
                  heavy)
              .stripTrailing());
    }
    return lines;
  }

  /** The heaviest few for each measure. */
  public static List<String> byMeasure(Assumptions all) {
    return Sentences.byMeasure(all);
  }

  /** Where another regime is preferred within a range. */
  public static List<String> turning(Assumptions all) {
    return Sentences.turning(all);
  }

  /** What could not be played. */
  public static List<String> failed(Assumptions all) {
    return Sentences.failed(all);
  }

  /** How to read it all. */
  public static List<String> reading(Assumptions all) {
    return Sentences.reading(all);
  }
}
