package longbough.shared.source;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every source that a parameter or a process cites, by its key. */
public final class Bibliography {

  /** The header of every bibliography file. */
  public static final List<String> HEADER = List.of("key", "text", "note");

  private static final String FOLDER = "longbough/bibliography/";

  private final Map<String, Citation> byKey;

  private Bibliography(Map<String, Citation> byKey) {
    this.byKey = byKey;
  }

  /** The whole bibliography; read once. */
  public static Bibliography load() {
    return Holder.ALL;
  }

  private static Bibliography read() {
    Map<String, Citation> map = new LinkedHashMap<>();
    for (String group : DataFile.index(FOLDER + "index.txt")) {
      for (DataRow row : DataFile.rows(FOLDER + group + ".csv", HEADER)) {
        add(map, row);
      }
    }
    return new Bibliography(map);
  }

  // The same work may be cited by several groups: the first entry stands (a test compares the
  // texts).
  private static void add(Map<String, Citation> map, DataRow row) {
    if (row.blank("key") || row.blank("text")) {
      throw row.wrong("key", "a row without key or text", "both", "fill in both");
    }
    map.putIfAbsent(
        row.text("key"), new Citation(row.text("key"), row.text("text"), row.text("note")));
  }

  public boolean has(String key) {
    return byKey.containsKey(key);
  }

  /** The source with that key; an unknown key is a mistake in our own data. */
  public Citation citation(String key) {
    Citation entry = byKey.get(key);
    if (entry == null) {
      throw new IllegalArgumentException(
          "no source with the key '" + key + "' in the bibliography files");
    }
    return entry;
  }

  public Collection<Citation> all() {
    return Collections.unmodifiableCollection(byKey.values());
  }

  private static final class Holder {
    private static final Bibliography ALL = read();
  }
}
