package longbough.runner.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.runner.yaml.Nearest;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.source.Basis;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;

/**
 * The parameters that may be fitted: those that {@code free.csv} lists with a reason and that no
 * source gives. A value that was published, or that the trade agrees on, is never fitted.
 */
public final class FreeList {
  private static final String FILE = "longbough/runner/fit/free.csv";
  private static final int SUGGESTIONS = 3;

  private final Map<String, String> why;
  private final ParameterTable table;

  FreeList(Map<String, String> why, ParameterTable table) {
    this.why = why;
    this.table = table;
  }

  /** The list that comes along. */
  public static FreeList load(ParameterTable table) {
    Map<String, String> why = new LinkedHashMap<>();
    for (DataRow row : DataFile.rows(FILE, List.of("name", "why"))) {
      if (row.blank("why") || why.putIfAbsent(row.text("name"), row.text("why")) != null) {
        throw row.wrong("name", row.text("name"), "each name once, with a reason", "mend the row");
      }
    }
    return new FreeList(why, table);
  }

  /** All that may be fitted as the files stand; a row that has found its source is left out. */
  public List<FreeParameter> all() {
    return why.keySet().stream().filter(name -> fault(name) == null).map(this::free).toList();
  }

  /** What is listed and yet may not be fitted, each with its reason. */
  public List<String> outdated() {
    return why.keySet().stream()
        .filter(name -> fault(name) != null)
        .map(name -> name + " (" + fault(name) + ")")
        .toList();
  }

  /** Those named, or a refusal that tells every mistake. */
  public List<FreeParameter> named(List<String> names, String option) {
    List<Problem> problems = new ArrayList<>();
    Map<String, FreeParameter> chosen = new LinkedHashMap<>();
    for (String name : names) {
      String fault = fault(name);
      if (fault != null) {
        problems.add(
            new Problem("", 0, 0, option, "'" + name + "', " + fault, allowed(name), mend(name)));
      } else if (chosen.put(name, free(name)) != null) {
        problems.add(
            new Problem("", 0, 0, option, "'" + name + "' again", "each name once", "say it once"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return List.copyOf(chosen.values());
  }

  private FreeParameter free(String name) {
    return new FreeParameter(table.get(name), why.get(name));
  }

  /** Why a parameter may not be fitted; null where it may. */
  private String fault(String name) {
    if (!table.has(name)) {
      return "which is no general parameter";
    }
    Sourced row = table.get(name);
    if (row.basis() == Basis.PUBLISHED) {
      return "which is published (" + row.citation() + ") and so not free";
    }
    if (row.basis() == Basis.COMMON_PRACTICE) {
      return "which is common practice and so not free";
    }
    if (!why.containsKey(name)) {
      return "which is not listed as free";
    }
    return row.range().width() > 0 ? null : "whose range has no width";
  }

  private String allowed(String name) {
    List<String> known = all().stream().map(FreeParameter::name).toList();
    return "parameters of free.csv that no source gives, e.g. "
        + String.join(", ", Nearest.of(name, known, SUGGESTIONS));
  }

  private String mend(String name) {
    boolean sourced =
        table.has(name)
            && List.of(Basis.PUBLISHED, Basis.COMMON_PRACTICE).contains(table.get(name).basis());
    boolean lacking = table.has(name) && !sourced && !why.containsKey(name);
    return lacking
        ? "name another, or give the reason in free.csv why it may be fitted"
        : "name another; 'longbough fit --screen' lists all";
  }
}
