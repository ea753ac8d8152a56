package longbough.runner.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.shared.quantity.Range;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/**
 * All keys of a kind of file, read from one table that its schema and its page are checked against.
 */
public final class KeyTable {

  private static final List<String> HEADER =
      List.of("section", "key", "kind", "low", "high", "words", "required", "meaning");

  private final Map<String, List<KeyRow>> sections = new LinkedHashMap<>();

  private KeyTable() {}

  /** The table at that place of the class path. */
  public static KeyTable read(String resource) {
    KeyTable table = new KeyTable();
    for (DataRow row : DataFile.rows(resource, HEADER)) {
      table.sections.computeIfAbsent(row.text("section"), s -> new ArrayList<>()).add(keyRow(row));
    }
    return table;
  }

  private static KeyRow keyRow(DataRow row) {
    Range range =
        row.blank("low") ? new Range(0, 0) : new Range(row.number("low"), row.number("high"));
    return new KeyRow(
        row.text("section"),
        row.text("key"),
        list(row.text("kind")),
        range,
        list(row.text("words")),
        row.text("required").equals("yes"),
        row.text("meaning"));
  }

  private static List<String> list(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" "));
  }

  /** Names of the sections in the order of the table. */
  public List<String> sections() {
    return List.copyOf(sections.keySet());
  }

  /** The keys of a section. */
  public List<KeyRow> section(String name) {
    List<KeyRow> rows = sections.get(name);
    if (rows == null) {
      throw new IllegalArgumentException("no section '" + name + "' in the table of keys");
    }
    return rows;
  }

  /** One key of a section. */
  public KeyRow row(String section, String key) {
    return row(section(section), key);
  }

  static KeyRow row(List<KeyRow> rows, String key) {
    return rows.stream()
        .filter(row -> row.key().equals(key))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("no key '" + key + "' in the table of keys"));
  }
}
