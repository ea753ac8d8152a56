package longbough.runner.batch;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * One tree and what becomes of it under each regime.
 *
 * @param tree the tree
 * @param outlooks in the order of its regimes; the first is that of leaving it alone
 */
public record TreeOutlook(BatchTree tree, List<Outlook> outlooks) {
  private static final Comparator<Outlook> LESS_TROUBLE =
      Comparator.comparingLong(TreeOutlook::passed).thenComparingDouble(TreeOutlook::trouble);

  /** Most trouble first; of equals the first name. */
  static final Comparator<TreeOutlook> MOST_TROUBLE =
      Comparator.comparing(TreeOutlook::alone, LESS_TROUBLE)
          .reversed()
          .thenComparing(outlook -> outlook.tree().name());

  public TreeOutlook {
    outlooks = List.copyOf(outlooks);
  }

  public Outlook alone() {
    return outlooks.get(0);
  }

  /** The regime under which the tree is in least trouble; of equals the first. */
  public Outlook best() {
    return outlooks.stream().min(LESS_TROUBLE).orElseThrow();
  }

  /** How many lines are passed. */
  public static long passed(Outlook outlook) {
    return Arrays.stream(Measure.values()).filter(measure -> measure.passed(outlook)).count();
  }

  /** Sum of the weights of all measures. */
  public static double trouble(Outlook outlook) {
    return Arrays.stream(Measure.values()).mapToDouble(measure -> measure.weight(outlook)).sum();
  }
}
