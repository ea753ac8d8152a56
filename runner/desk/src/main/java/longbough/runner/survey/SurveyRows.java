package longbough.runner.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.sheet.Sheet;
import longbough.runner.sheet.SheetFaults;
import longbough.runner.sheet.SheetRow;
import longbough.runner.survey.SurveyedTree.Value;
import longbough.runner.yaml.KeyRow;
import longbough.runner.yaml.Nearest;
import longbough.shared.problem.Problem;

/** Gathers rows into trees; the sheet of trees has to come first. */
final class SurveyRows {
  private static final int MOST_TREES = 2_000;
  private static final int LONGEST_NAME = 60;
  private static final int LONGEST_TITLE = 120;
  private static final Map<String, String> KEY_OF_LIST =
      Map.of("limb", "limbs", "cavity", "cavities", "wound", "old_wounds");

  private final SheetFaults whole;
  private final Map<String, SurveyedTree> trees = new LinkedHashMap<>();
  private final Map<String, SurveyedTree> files = new HashMap<>();
  private final Map<SurveyedTree, List<Problem>> faults = new LinkedHashMap<>();

  SurveyRows(SheetFaults whole) {
    this.whole = whole;
  }

  List<SurveyedTree> trees() {
    return List.copyOf(trees.values());
  }

  Map<SurveyedTree, List<Problem>> faults() {
    return faults;
  }

  void read(Sheet sheet, String kind) {
    List<Heading> headings = Headings.of(sheet, kind, whole);
    for (SheetRow row : sheet.rows().subList(1, sheet.rows().size())) {
      SurveyedTree tree =
          kind.equals("trees") ? newTree(sheet, row, headings) : knownTree(sheet, row, headings);
      if (tree != null) {
        new SurveyRow(sheet, kind, row, headings, tree, problem -> fault(tree, problem)).read();
        bounded(tree, sheet, row);
      }
    }
  }

  private void fault(SurveyedTree tree, Problem problem) {
    faults.computeIfAbsent(tree, t -> new ArrayList<>()).add(problem);
  }

  private SurveyedTree newTree(Sheet sheet, SheetRow row, List<Heading> headings) {
    Origin at = nameCell(sheet, row, headings, Kind.NAME);
    String name = at.column() == 0 ? "" : row.cell(at.column() - 1);
    if (at.column() == 0 && !whole.problems().isEmpty()) {
      return null;
    }
    if (name.isEmpty() || name.length() > LONGEST_NAME) {
      whole.add(
          at.problem(
              name.isEmpty() ? "nothing" : "a name of " + name.length() + " characters",
              "a name or number of up to " + LONGEST_NAME + " characters",
              "give each tree a name; the other sheets are joined by it"));
      return null;
    }
    SurveyedTree tree = new SurveyedTree(name, new Origin(at.place(), at.line(), 0, ""));
    SurveyedTree earlier = trees.putIfAbsent(key(name), tree);
    if (earlier != null) {
      whole.add(
          at.problem(
              SheetFaults.quoted(name) + " again, as in line " + earlier.origin().line(),
              "each tree once",
              "give one of them another name"));
      return null;
    }
    SurveyedTree same = files.putIfAbsent(TreeFiles.fileName(tree), tree);
    if (same != null || TreeFiles.fileName(tree).startsWith(".")) {
      whole.add(
          at.problem(
              SheetFaults.quoted(name),
              "a name with letters or digits from which a file's name of its own can be made",
              "change the name"));
    }
    if (trees.size() > MOST_TREES) {
      trees.remove(key(name));
      whole.add(
          at.problem("more than " + MOST_TREES + " trees", "", "split the sheet into several"));
      return null;
    }
    return tree;
  }

  private SurveyedTree knownTree(Sheet sheet, SheetRow row, List<Heading> headings) {
    Origin at = nameCell(sheet, row, headings, Kind.TREE);
    String name = at.column() == 0 ? "" : row.cell(at.column() - 1);
    if (name.isEmpty() && trees.size() == 1) {
      return trees.values().iterator().next();
    }
    SurveyedTree tree = trees.get(key(name));
    if (tree == null) {
      List<String> names = trees.values().stream().map(SurveyedTree::name).toList();
      String nearest = Nearest.of(name, names);
      boolean plausible = !name.isEmpty() && !names.isEmpty() && Nearest.plausible(name, nearest);
      whole.add(
          at.problem(
              name.isEmpty() ? "no tree's name" : "the unknown tree " + SheetFaults.quoted(name),
              "a tree of the sheet of trees",
              plausible
                  ? "did you mean " + SheetFaults.quoted(nearest) + "?"
                  : "give the tree's name as it stands in the column 'tree' there"));
    }
    return tree;
  }

  private static Origin nameCell(Sheet sheet, SheetRow row, List<Heading> headings, Kind kind) {
    return headings.stream()
        .filter(heading -> !heading.note() && heading.column().kind() == kind)
        .findFirst()
        .map(h -> new Origin(sheet.place(), row.line(), h.index() + 1, h.written()))
        .orElse(new Origin(sheet.place(), row.line(), 0, ""));
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** Notes it once when a tree has more of something than a scenario holds. */
  private void bounded(SurveyedTree tree, Sheet sheet, SheetRow row) {
    KEY_OF_LIST.forEach(
        (section, key) -> {
          KeyRow allowed = ScenarioReader.keys().row("tree", key);
          if (tree.items(section).size() == (int) allowed.range().high() + 1) {
            fault(
                tree,
                new Origin(sheet.place(), row.line(), 0, "")
                    .problem(
                        "one more row for tree " + SheetFaults.quoted(tree.name()),
                        "up to " + (int) allowed.range().high() + " a tree",
                        "keep those that matter most"));
          }
        });
    if (tree.value("scenario", "title") == null) {
      Value species = tree.value("tree", "species");
      String title = tree.name() + (species == null ? "" : ", " + unquoted(species.yaml()));
      tree.only("scenario").put("title", new Value(Answer.quoted(cut(title)), tree.origin()));
    }
  }

  private static String unquoted(String yaml) {
    return yaml.substring(1, yaml.length() - 1).replace("\\\"", "'").replace("\\\\", "/");
  }

  private static String cut(String title) {
    return title.length() <= LONGEST_TITLE ? title : title.substring(0, LONGEST_TITLE);
  }
}
