package longbough.runner.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.written.Scenario;
import longbough.runner.survey.SurveyedTree.Value;
import longbough.runner.yaml.KeyRow;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/** The scenario file that a noted tree becomes, and the way back from its keys to the cells. */
public final class ScenarioText {
  private static final Map<String, String> LISTS =
      Map.of("cavities", "cavity", "old_wounds", "wound", "topped", "topping", "limbs", "limb");
  private static final Map<String, String> MAPS =
      Map.of("crown_spread_m", "spread", "last_pruned", "pruned");

  private final SurveyedTree tree;
  private final StringBuilder text = new StringBuilder();
  private final Map<String, Origin> origins = new HashMap<>();

  private ScenarioText(SurveyedTree tree) {
    this.tree = tree;
  }

  /** The text for a tree, its first line being a comment. */
  public static ScenarioText of(SurveyedTree tree, Plan plan, String comment) {
    ScenarioText scenario = new ScenarioText(tree);
    scenario.text.append("# ").append(comment).append('\n');
    scenario.top("title");
    scenario.top("about");
    scenario.tree();
    scenario.site(plan);
    scenario.top("climate");
    boolean ownClimate = tree.value("scenario", "climate") != null;
    plan.blocks()
        .forEach(
            (key, block) -> {
              if (!(ownClimate && key.equals("climate"))) {
                scenario.text.append(block);
              }
            });
    return scenario;
  }

  public String yaml() {
    return text.toString();
  }

  /**
   * Reads the text as any scenario is read.
   *
   * @param name file name for the scenario
   * @throws InputException with every mistake, told by the cell it came from
   */
  public Scenario read(String name) {
    try {
      return ScenarioReader.parse(name, yaml());
    } catch (InputException refused) {
      throw new InputException(refused.problems().stream().map(this::inSheet).toList());
    }
  }

  private Problem inSheet(Problem problem) {
    Origin at = origin(problem.field());
    String found = at.column() == 0 ? problem.field() + ": " + problem.found() : problem.found();
    boolean us = at.heading().endsWith("_ft") || at.heading().endsWith("_in");
    String mend =
        us
            ? "check the value and its unit; here it is told in metric (1 ft = 0.3048 m, 1 in = 2.54 cm)"
            : problem.mend();
    return at.problem(found, problem.allowed(), mend);
  }

  /** The cell of a key; of a missing one the cells of its block, or else the row. */
  private Origin origin(String path) {
    if (origins.containsKey(path)) {
      return origins.get(path);
    }
    String block = path.replaceFirst("\\.[^.]*$", "");
    return block.equals("tree")
        ? tree.origin()
        : origins.entrySet().stream()
            .filter(entry -> entry.getKey().startsWith(block + "."))
            .map(Map.Entry::getValue)
            .findFirst()
            .map(first -> new Origin(first.place(), first.line(), 0, ""))
            .orElse(tree.origin());
  }

  private void top(String key) {
    Value value = tree.value("scenario", key);
    if (value != null) {
      origins.put(key, value.origin());
      text.append(key).append(": ").append(value.yaml()).append('\n');
    }
  }

  private void tree() {
    text.append("tree:\n");
    for (KeyRow row : ScenarioReader.keys().section("tree")) {
      String key = row.key();
      Value value = tree.value("tree", key);
      if (value != null) {
        origins.put("tree." + key, value.origin());
        text.append("  ").append(key).append(": ").append(value.yaml()).append('\n');
      } else if (MAPS.containsKey(key) && !tree.items(MAPS.get(key)).isEmpty()) {
        Map<String, Value> item = tree.items(MAPS.get(key)).get(0);
        text.append("  ").append(key).append(": ").append(flow("tree." + key, item)).append('\n');
      } else if (LISTS.containsKey(key)) {
        list(key, tree.items(LISTS.get(key)));
      }
    }
    if (!tree.notes().isEmpty()) {
      String notes = String.join("; ", tree.notes());
      text.append("  notes: ").append(Answer.quoted(notes)).append('\n');
    }
  }

  private void list(String key, List<Map<String, Value>> items) {
    if (items.isEmpty()) {
      return;
    }
    text.append("  ").append(key).append(":\n");
    for (int i = 0; i < items.size(); i++) {
      String path = "tree." + key + "[" + (i + 1) + "]";
      text.append("    - ").append(flow(path, items.get(i))).append('\n');
      origins.putIfAbsent("tree." + key, items.get(i).values().iterator().next().origin());
    }
  }

  private void site(Plan plan) {
    Map<String, String> site = new LinkedHashMap<>(plan.site());
    tree.items("site")
        .forEach(
            item ->
                item.forEach(
                    (key, value) -> {
                      site.put(key, value.yaml());
                      origins.put("site." + key, value.origin());
                    }));
    if (!site.isEmpty()) {
      text.append("site:\n");
      site.forEach((key, value) -> text.append("  " + key + ": " + value + "\n"));
    }
  }

  private String flow(String path, Map<String, Value> item) {
    List<String> pairs = new ArrayList<>();
    item.forEach(
        (key, value) -> {
          origins.put(path + "." + key, value.origin());
          pairs.add(key + ": " + value.yaml());
        });
    return pairs.stream().collect(Collectors.joining(", ", "{", "}"));
  }
}
