package longbough.runner.assumption.page;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.AssumptionWords;
import longbough.runner.assumption.Assumptions;

/** The ten heaviest parameters as a table of the README, between two marks. */
final class ReadmeTable {
  private static final String BEGIN = "<!-- generated assumptions -->\n";
  private static final String END = "<!-- end assumptions -->";

  private ReadmeTable() {}

  static String renewed(String readme, Assumptions all) {
    int from = readme.indexOf(BEGIN) + BEGIN.length();
    int to = readme.indexOf(END);
    return readme.substring(0, from)
        + "\n"
        + String.join("\n", lines(all))
        + "\n\n"
        + readme.substring(to);
  }

  /** The cells of each row that stands there now, the parameter's place first. */
  static List<List<String>> rows(String readme) {
    String table = readme.substring(readme.indexOf(BEGIN), readme.indexOf(END));
    return table
        .lines()
        .filter(line -> line.matches("\\| \\d+ \\|.*"))
        .map(line -> List.of(line.substring(2, line.length() - 2).split(" \\| ", -1)))
        .toList();
  }

  /** Value and basis as they have to stand in the row of that parameter. */
  static List<String> now(Assumption one, boolean flagged) {
    String basis = Sentences.basis(one, flagged).replace('\u00a0', ' ');
    return List.of(AssumptionWords.value(one.parameter()), flagged ? "**" + basis + "**" : basis);
  }

  private static List<String> lines(Assumptions all) {
    List<String> lines = new ArrayList<>();
    lines.add("| | parameter | value (range) | basis | effect | on |");
    lines.add("|---|---|---|---|---|---|");
    List<Assumption> flagged = all.flagged();
    List<Assumption> first = all.first(Assumptions.LOOKED_AT);
    for (int place = 0; place < first.size(); place++) {
      Assumption one = first.get(place);
      List<String> now = now(one, flagged.contains(one));
      String turns = one.turns().isEmpty() ? "" : ", turns the verdict";
      lines.add(
          "| %d | `%s` | %s | %s | %s | %s |"
              .formatted(
                  place + 1,
                  one.parameter().name(),
                  now.get(0),
                  now.get(1),
                  AssumptionWords.effect(one.weight()),
                  AssumptionWords.measure(one.strongest().metric()) + turns));
    }
    return lines;
  }
}
