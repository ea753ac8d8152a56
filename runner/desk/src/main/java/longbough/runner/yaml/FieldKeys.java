package longbough.runner.yaml;

import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Looks at the keys of one block: known, written once, and none missing. */
final class FieldKeys {

  private final String path;
  private final String noun;
  private final List<String> known;
  private final Mistakes mistakes;

  private FieldKeys(String path, String noun, List<String> known, Mistakes mistakes) {
    this.path = path;
    this.noun = noun;
    this.known = known;
    this.mistakes = mistakes;
  }

  /** Puts the values of known keys into the map and notes every mistake about keys. */
  static void collect(
      MappingNode block,
      String path,
      String noun,
      List<KeyRow> rows,
      Mistakes mistakes,
      Map<String, Node> values) {
    FieldKeys keys = new FieldKeys(path, noun, rows.stream().map(KeyRow::key).toList(), mistakes);
    for (NodeTuple pair : block.getValue()) {
      keys.add(pair, values);
    }
    for (KeyRow row : rows) {
      if (row.required() && !values.containsKey(row.key())) {
        mistakes.add(
            Place.of(block.getStartMark()),
            keys.pathOf(row.key()),
            "nothing",
            row.allowed(),
            "add '" + row.key() + ":', " + row.meaning());
      }
    }
  }

  private void add(NodeTuple pair, Map<String, Node> values) {
    Place place = Place.of(pair.getKeyNode().getStartMark());
    if (!(pair.getKeyNode() instanceof ScalarNode scalar)) {
      mistakes.add(place, path, "a block or list as a key", "plain keys", "write 'key: value'");
      return;
    }
    String key = scalar.getValue();
    if (!known.contains(key)) {
      unknown(key, place);
    } else if (values.putIfAbsent(key, pair.getValueNode()) != null) {
      mistakes.add(
          place, pathOf(key), "this key a second time", "each key once", "remove one of the two");
    }
  }

  private void unknown(String key, Place place) {
    String quoted = Mistakes.quoted(key);
    mistakes.add(
        place,
        path,
        "unknown " + noun + " " + quoted,
        String.join(", ", known),
        known.isEmpty() || !Nearest.plausible(key, Nearest.of(key, known))
            ? "remove it"
            : "did you mean '" + Nearest.of(key, known) + "'? Otherwise remove it");
  }

  private String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
