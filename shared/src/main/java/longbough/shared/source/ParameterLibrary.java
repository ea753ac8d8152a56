package longbough.shared.source;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The general parameters (all but the species' own), read once from the files the index lists. */
public final class ParameterLibrary {

  private static final String FOLDER = "longbough/parameters/";

  private ParameterLibrary() {}

  /** All general parameters in the order of the index. */
  public static ParameterTable general() {
    return Holder.GENERAL;
  }

  /** The groups that have a file, e.g. {@code light}. */
  public static List<String> groups() {
    return DataFile.index(FOLDER + "index.txt");
  }

  private static ParameterTable read() {
    List<Sourced> all = new ArrayList<>();
    Map<String, String> groupOf = new HashMap<>();
    for (String group : groups()) {
      List<DataRow> rows = DataFile.rows(FOLDER + group + ".csv", ParameterReader.HEADER);
      for (DataRow row : rows) {
        String other = groupOf.putIfAbsent(row.text("name"), group);
        if (other != null && !other.equals(group)) {
          throw row.wrong(
              "name",
              "'" + row.text("name") + "', which stands in " + other + ".csv too",
              "each name in one file",
              "remove one of the two rows");
        }
      }
      all.addAll(ParameterReader.read(rows));
    }
    return ParameterTable.of(all);
  }

  /** Read on first use only, so that commands that need no parameters start fast. */
  private static final class Holder {
    private static final ParameterTable GENERAL = read();
  }
}
