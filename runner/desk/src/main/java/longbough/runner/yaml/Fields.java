package longbough.runner.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * One block of keys and values. Asking for a key gives its value if it is usable; whatever is wrong
 * with it has then been noted, so the asker just goes on. Keys that the table doesn't know, keys
 * written twice and required keys that are missing are noted when the block is opened.
 */
public final class Fields {

  private final String path;
  private final Place place;
  private final List<KeyRow> rows;
  private final KeyTable table;
  private final Mistakes mistakes;
  private final Map<String, Node> values = new LinkedHashMap<>();
  private boolean blank;

  private Fields(String path, Place place, List<KeyRow> rows, KeyTable table, Mistakes mistakes) {
    this.path = path;
    this.place = place;
    this.rows = rows;
    this.table = table;
    this.mistakes = mistakes;
  }

  /** Opens the outermost block of a file. */
  public static Fields of(YamlSource source, String section, KeyTable table, Mistakes mistakes) {
    return open(source.root(), "", section, "key", table, mistakes);
  }

  private static Fields open(
      Node node, String path, String section, String noun, KeyTable table, Mistakes mistakes) {
    Fields fields =
        new Fields(path, Place.of(node.getStartMark()), table.section(section), table, mistakes);
    if (node instanceof MappingNode map) {
      fields.blank = map.getValue().isEmpty();
      FieldKeys.collect(map, path, noun, fields.rows, mistakes, fields.values);
    } else {
      mistakes.add(
          fields.place,
          path,
          Scalars.describe(node),
          "a block of keys",
          "keys here: " + String.join(", ", fields.rows.stream().map(KeyRow::key).toList()));
    }
    return fields;
  }

  public Place place() {
    return place;
  }

  /** Whether the block is there but holds nothing at all. */
  public boolean blank() {
    return blank;
  }

  public String path() {
    return path;
  }

  /** The keys that may be written here. */
  public List<KeyRow> rows() {
    return rows;
  }

  /** The known keys that were written, in their order. */
  public List<String> written() {
    return List.copyOf(values.keySet());
  }

  /** Where the value of a key stands, or the block where it isn't there. */
  public Place place(String key) {
    Node node = values.get(key);
    return node == null ? place : Place.of(node.getStartMark());
  }

  /** Whether the key holds a block rather than one value. */
  public boolean holdsMap(String key) {
    return values.get(key) instanceof MappingNode;
  }

  /** Whether the key holds a word or text rather than a number. */
  public boolean holdsText(String key) {
    return values.get(key) instanceof ScalarNode scalar && Scalars.isText(scalar);
  }

  public Given<Double> number(String key) {
    return read(key, (node, row) -> Scalars.number(node, row.range()));
  }

  public Given<Long> whole(String key) {
    return read(key, (node, row) -> Scalars.whole(node, row.range()));
  }

  public Given<String> text(String key) {
    return read(key, (node, row) -> Scalars.text(node, row.range()));
  }

  public Given<Boolean> flag(String key) {
    return read(key, (node, row) -> Scalars.flag(node));
  }

  /** One of the words that the table allows. */
  public Given<String> word(String key) {
    return read(key, (node, row) -> Scalars.word(node, row.words()));
  }

  /** A number, or a word that stands for one. */
  public Given<Level> level(String key, ToDoubleFunction<String> valueOf) {
    if (!holdsText(key)) {
      Given<Double> number = number(key);
      Level level = number.present() ? new Level("", number.value()) : null;
      return new Given<>(level, number.written(), number.field(), number.place());
    }
    Given<String> word = word(key);
    Level level =
        word.present() ? new Level(word.value(), valueOf.applyAsDouble(word.value())) : null;
    return Given.of(level, word.field(), word.place());
  }

  /**
   * As many numbers as the table allows at this key, each within the limits of that key in another
   * section.
   */
  public Given<List<Double>> numbers(String key, String each) {
    List<Double> result = new ArrayList<>();
    boolean whole = true;
    List<Node> items = items(key);
    for (int i = 0; i < items.size(); i++) {
      Optional<Double> value =
          Scalars.number(items.get(i), KeyTable.row(table.section(each), key).range());
      whole &= value.isPresent();
      if (value.isEmpty()) {
        wrong(
            items.get(i),
            pathOf(key) + "[" + (i + 1) + "]",
            KeyTable.row(table.section(each), key));
      }
      value.ifPresent(result::add);
    }
    return Given.of(whole && !items.isEmpty() ? result : null, pathOf(key), place(key));
  }

  /** As many texts as the table allows at this key, each as that key in another section. */
  public List<String> texts(String key, String each) {
    List<String> result = new ArrayList<>();
    List<Node> items = items(key);
    KeyRow one = KeyTable.row(table.section(each), key);
    for (int i = 0; i < items.size(); i++) {
      Optional<String> text = Scalars.text(items.get(i), one.range());
      if (text.isEmpty()) {
        wrong(items.get(i), pathOf(key) + "[" + (i + 1) + "]", one);
      }
      text.ifPresent(result::add);
    }
    return List.copyOf(result);
  }

  /** The block at a key, if there is one. */
  public Optional<Fields> map(String key, String section) {
    row(key);
    return Optional.ofNullable(values.get(key))
        .map(node -> open(node, pathOf(key), section, "key", table, mistakes));
  }

  /** The blocks of a list; none where there is no list. */
  public List<Fields> maps(String key, String section) {
    return maps(key, section, "key");
  }

  /** The blocks of a list whose keys go by another noun in messages. */
  public List<Fields> maps(String key, String section, String noun) {
    List<Fields> result = new ArrayList<>();
    List<Node> items = items(key);
    for (int i = 0; i < items.size(); i++) {
      String item = pathOf(key) + "[" + (i + 1) + "]";
      result.add(open(items.get(i), item, section, noun, table, mistakes));
    }
    return result;
  }

  /**
   * An empty block in place of one that is missing, so that its keys can be asked for all the same.
   */
  public Fields none(String key, String section) {
    return new Fields(pathOf(key), place, table.section(section), table, mistakes);
  }

  /** Notes a mistake at this block. */
  public void mistake(String found, String allowed, String mend) {
    mistakes.add(place, path, found, allowed, mend);
  }

  private List<Node> items(String key) {
    Node node = values.get(key);
    if (node == null) {
      row(key);
      return List.of();
    }
    List<Node> items = node instanceof SequenceNode list ? list.getValue() : List.of();
    if (!(node instanceof SequenceNode) || !row(key).range().contains(items.size())) {
      wrong(node, pathOf(key), row(key));
      return List.of();
    }
    return items;
  }

  private <T> Given<T> read(String key, Reading<T> reading) {
    KeyRow row = row(key);
    Node node = values.get(key);
    if (node == null) {
      return Given.absent(pathOf(key), place);
    }
    Optional<T> value = reading.of(node, row);
    if (value.isEmpty()) {
      wrong(node, pathOf(key), row);
    }
    return Given.of(value.orElse(null), pathOf(key), Place.of(node.getStartMark()));
  }

  private void wrong(Node node, String field, KeyRow row) {
    mistakes.add(
        Place.of(node.getStartMark()),
        field,
        Scalars.describe(node),
        row.allowed(),
        Scalars.hint(node, row).orElse(row.key() + ": " + row.meaning()));
  }

  private KeyRow row(String key) {
    return KeyTable.row(rows, key);
  }

  private String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  private interface Reading<T> {
    Optional<T> of(Node node, KeyRow row);
  }
}
