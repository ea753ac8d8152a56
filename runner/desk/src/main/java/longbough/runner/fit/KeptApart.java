package longbough.runner.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/**
 * The checks that no fit may look at, so that they show whether it learned the trees or only the
 * checks. They were drawn once, before any fit: within the processes, in the order of the files,
 * every fourth result from the second on, all lines of one result (P01a, P01b, ...) together, and
 * none from what no parameter can move (limits, geometry, formulas).
 */
public final class KeptApart {
  private static final String FILE = "longbough/runner/fit/kept-apart.csv";

  private KeptApart() {}

  /** The process of each check kept apart. */
  public static Map<String, String> checks() {
    Map<String, String> checks = new LinkedHashMap<>();
    for (DataRow row : DataFile.rows(FILE, List.of("check", "process"))) {
      checks.put(row.text("check"), row.text("process"));
    }
    return checks;
  }
}
