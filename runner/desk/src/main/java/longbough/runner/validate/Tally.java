package longbough.runner.validate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How many checks stand how, and the checks of each process together. */
public record Tally(Map<Standing, Integer> counts) {

  public static Tally of(List<ValidationRow> rows) {
    Map<Standing, Integer> counts = new EnumMap<>(Standing.class);
    for (Standing standing : Standing.values()) {
      counts.put(standing, 0);
    }
    rows.forEach(row -> counts.merge(row.standing(), 1, Integer::sum));
    return new Tally(counts);
  }

  public int count(Standing standing) {
    return counts.get(standing);
  }

  public int all() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  public int tried() {
    return all() - count(Standing.NOT_TRIED);
  }

  /** What passed, what was missed and what was not tried, e.g. {@code 6 of 8 checks tried pass}. */
  public String sentence() {
    if (tried() == 0) {
      return "None of " + all() + " published checks was tried.";
    }
    int passed = count(Standing.PASS);
    int open = count(Standing.NOT_TRIED);
    String share = passed + " of " + tried() + (tried() == 1 ? " check" : " checks");
    String missed =
        ". Missed: "
            + count(Standing.MISS)
            + " in the right direction, "
            + count(Standing.WRONG_WAY)
            + " in the wrong one.";
    return share
        + " tried pass ("
        + Math.round(100.0 * passed / tried())
        + " %)"
        + (passed == tried() ? "." : missed)
        + (open > 0 ? " Not tried yet: " + open + " of " + all() + "." : "");
  }

  /** The rows by process, in the order in which each process first comes. */
  public static Map<String, List<ValidationRow>> byProcess(List<ValidationRow> rows) {
    Map<String, List<ValidationRow>> groups = new LinkedHashMap<>();
    for (ValidationRow row : rows) {
      groups.computeIfAbsent(row.check().process(), process -> new ArrayList<>()).add(row);
    }
    return groups;
  }
}
