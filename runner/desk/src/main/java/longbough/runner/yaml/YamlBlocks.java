package longbough.runner.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The outermost blocks of a YAML text as they were written, comments and all. */
public final class YamlBlocks {

  private YamlBlocks() {}

  /**
   * The text of each outermost key with its value; empty where two keys share a line, as in a text
   * that is one pair of braces.
   */
  public static Map<String, String> of(YamlSource source) {
    Map<String, String> blocks = new LinkedHashMap<>();
    if (!(source.root() instanceof MappingNode root)) {
      return blocks;
    }
    List<String> lines = source.text().lines().toList();
    List<Integer> starts = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (NodeTuple pair : root.getValue()) {
      Place place = Place.of(pair.getKeyNode().getStartMark());
      if (!(pair.getKeyNode() instanceof ScalarNode key) || place.column() != 1) {
        return Map.of();
      }
      starts.add(place.line() - 1);
      keys.add(key.getValue());
    }
    for (int i = 0; i < keys.size(); i++) {
      int end = i + 1 < keys.size() ? starts.get(i + 1) : lines.size();
      blocks.put(keys.get(i), String.join("\n", lines.subList(starts.get(i), end)) + "\n");
    }
    return blocks;
  }
}
