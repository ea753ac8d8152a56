package longbough.runner.verdict;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import longbough.model.history.VisitRow;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;

/** Published limits that the visits of the median future pass; the same sentence stands once. */
public final class LimitWarnings {

  private LimitWarnings() {}

  /** Warnings of one regime with the years they hold for. */
  public static List<String> of(RegimeResult result) {
    Map<String, TreeSet<Integer>> years = new LinkedHashMap<>();
    for (VisitRow visit : result.medianFuture().visits()) {
      for (String warning : visit.warnings()) {
        String key = OperationWords.done(visit.operation()) + ": " + warning;
        years.computeIfAbsent(key, added -> new TreeSet<>()).add(visit.year());
      }
    }
    List<String> all = new ArrayList<>();
    years.forEach((warning, when) -> all.add(dated(when) + ", " + warning));
    return all;
  }

  /** Warnings of every regime, each with its regime's name in front. */
  public static List<String> of(Comparison comparison) {
    List<String> all = new ArrayList<>();
    for (RegimeResult result : comparison.regimes()) {
      of(result).forEach(warning -> all.add(Verdict.quoted(result.name()) + ", " + warning));
    }
    return all;
  }

  private static String dated(TreeSet<Integer> years) {
    String list = years.stream().map(String::valueOf).collect(Collectors.joining(", "));
    return (years.size() == 1 ? "year " : "years ") + list;
  }
}
