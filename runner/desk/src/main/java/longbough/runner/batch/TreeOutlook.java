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

  /** Most trouble first; of equals the first name. */
  static final Comparator<TreeOutlook> MOST_TROUBLE =
      Comparator.comparingDouble((TreeOutlook outlook) -> trouble(outlook.alone()))
          .reversed()
          .thenComparing(outlook -> outlook.tree().name());

  public TreeOutlook {
    outlooks = List.copyOf(outlooks);
  }

  public Outlook alone() {
    return outlooks.get(0);
  }

  /**
   * The regime under which the tree is in least trouble; leaving it alone, unless another is better
   * by enough to be named.
   */
  public Outlook best() {
    Outlook best = outlooks.stream().min(Comparator.comparingDouble(TreeOutlook::trouble)).get();
    return trouble(alone()) - trouble(best) >= Measure.worthNaming() ? best : alone();
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
