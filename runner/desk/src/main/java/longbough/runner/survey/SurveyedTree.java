package longbough.runner.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One tree as noted, gathered block by block of the scenario that it becomes. A block is a list of
 * maps from key to value; most blocks have one map, an inventory has one a limb.
 */
public final class SurveyedTree {

  /** A value as the scenario takes it, and where it came from. */
  public record Value(String yaml, Origin origin) {}

  private final String name;
  private final Origin origin;
  private final Map<String, List<Map<String, Value>>> blocks = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();

  public SurveyedTree(String name, Origin origin) {
    this.name = name;
    this.origin = origin;
  }

  public String name() {
    return name;
  }

  /** The row of the tree. */
  public Origin origin() {
    return origin;
  }

  /** Begins the next item of a block. */
  public Map<String, Value> add(String section) {
    Map<String, Value> item = new LinkedHashMap<>();
    blocks.computeIfAbsent(section, s -> new ArrayList<>()).add(item);
    return item;
  }

  /** The only item of a block, begun where it isn't there yet. */
  public Map<String, Value> only(String section) {
    List<Map<String, Value>> items = items(section);
    return items.isEmpty() ? add(section) : items.get(0);
  }

  /** The items of a block, none where nothing was noted. */
  public List<Map<String, Value>> items(String section) {
    return blocks.getOrDefault(section, List.of());
  }

  /** Something for the report that the model does not use. */
  public void note(String text) {
    notes.add(text);
  }

  public List<String> notes() {
    return List.copyOf(notes);
  }

  /** A value of a block with one item, or null. */
  public Value value(String section, String key) {
    List<Map<String, Value>> items = items(section);
    return items.isEmpty() ? null : items.get(0).get(key);
  }
}
