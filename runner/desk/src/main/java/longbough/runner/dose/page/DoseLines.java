package longbough.runner.dose.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.dose.DoseCell;
import longbough.runner.dose.DoseTable;
import longbough.runner.dose.DryCase;
import longbough.runner.dose.Turnabout;

/** The tables on the terminal. */
public final class DoseLines {
  private static final int FIRST = 12;
  private static final int ALIVE = 19;
  private static final int FULL = 12;

  private DoseLines() {}

  /** The table of one tree, and where more is not worse. */
  public static List<String> of(DoseTable table) {
    List<String> lines = new ArrayList<>();
    lines.add(table.input().title());
    lines.add(DoseWords.tree(table.input()));
    lines.add("");
    StringBuilder cases = new StringBuilder(" ".repeat(FIRST));
    StringBuilder heads = new StringBuilder(left("thinned", FIRST));
    for (DryCase dry : DryCase.values()) {
      cases.append(left(dry.label(), ALIVE + FULL));
      heads.append(left("alive % (95 %)", ALIVE)).append(left("full again", FULL));
    }
    lines.add(cases.toString().stripTrailing());
    lines.add(heads.toString().stripTrailing());
    for (int dose = 0; dose < table.doses().size(); dose++) {
      lines.add(row(table, dose));
    }
    List<Turnabout> turnabouts = Turnabout.of(table);
    if (!turnabouts.isEmpty()) {
      lines.add("");
      lines.add("Where more is not worse, over the same futures:");
      turnabouts.forEach(turnabout -> lines.add("* " + turnabout.sentence()));
    }
    return lines;
  }

  /** How to read them; the same for every tree. */
  public static List<String> reading(DoseTable table) {
    return DoseWords.reading(table);
  }

  private static String row(DoseTable table, int dose) {
    StringBuilder line =
        new StringBuilder(left(DoseWords.dose(table.cell(DryCase.NONE, dose)), FIRST));
    for (DryCase dry : DryCase.values()) {
      DoseCell cell = table.cell(dry, dose);
      line.append(left(DoseWords.alive(cell), ALIVE));
      line.append(left(DoseWords.full(cell, table.input().years()), FULL));
    }
    return line.toString().stripTrailing();
  }

  private static String left(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }
}
