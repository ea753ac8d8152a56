package longbough.runner.batch;

import java.util.List;

/**
 * A batch as played.
 *
 * @param ranked every tree that was played, the one in most trouble first
 * @param notPlayed what was left out, and why
 */
public record Batch(List<TreeOutlook> ranked, List<NotPlayed> notPlayed) {

  public Batch {
    ranked = List.copyOf(ranked);
    notPlayed = List.copyOf(notPlayed);
  }

  /** Trees beyond at least one line if left alone. */
  public long inTrouble() {
    return ranked.stream().filter(tree -> TreeOutlook.passed(tree.alone()) > 0).count();
  }
}
