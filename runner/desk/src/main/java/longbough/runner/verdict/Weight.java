package longbough.runner.verdict;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longbough.model.history.TreeEvent;

/**
 * How much an event tells about how a future went, for choosing which years a short account keeps.
 * The order is ours: death, then what the tree suffered and the crew did for the first time, then
 * repetitions. An event of weight 0 is left out of short accounts.
 */
final class Weight {
  private static final int DEATH = 100;
  private static final int TURN = 60;
  private static final int FIRST_WORK = 50;
  private static final int STRESS = 40;
  private static final int WORK = 20;
  private static final int SMALL = 0;

  /** Limbs thicker than this count when they break. */
  private static final double THICK_LIMB_M = 0.1;

  /** So many limbs broken by one gust count however thin they are. */
  private static final long MANY_LIMBS = 3;

  /** Sprouting counts in years with at least this share of the most in any year. */
  private static final double MANY_SPROUTS = 0.5;

  /** Foliage taken on a visit that always counts. */
  private static final double BIG_DOSE = 0.1;

  private final Set<String> seen = new HashSet<>();
  private final double mostSprouts;
  private final Map<Integer, Long> limbsBroken;

  Weight(List<TreeEvent> events) {
    mostSprouts =
        events.stream()
            .filter(TreeEvent.Sprouted.class::isInstance)
            .mapToDouble(event -> ((TreeEvent.Sprouted) event).count())
            .max()
            .orElse(0);
    limbsBroken =
        events.stream()
            .filter(TreeEvent.LimbBroken.class::isInstance)
            .collect(Collectors.groupingBy(TreeEvent::year, Collectors.counting()));
  }

  /** The weight of the next event; events are asked for in the order of their years. */
  int of(TreeEvent event) {
    if (event instanceof TreeEvent.Died) {
      return DEATH;
    } else if (event instanceof TreeEvent.ReserveLow) {
      return first("low", TURN, STRESS);
    } else if (event instanceof TreeEvent.DecayReached) {
      return first("decay", TURN, WORK);
    } else if (event instanceof TreeEvent.Pruned pruned) {
      boolean big = pruned.foliageRemovedFraction() >= BIG_DOSE;
      return first(pruned.operation(), big ? FIRST_WORK : STRESS, big ? WORK : SMALL);
    } else if (event instanceof TreeEvent.Drought || event instanceof TreeEvent.Defoliated) {
      return STRESS;
    } else if (event instanceof TreeEvent.LimbBroken broken) {
      boolean many = limbsBroken.get(event.year()) >= MANY_LIMBS;
      return many || broken.diameterM() >= THICK_LIMB_M ? STRESS : SMALL;
    } else if (event instanceof TreeEvent.Sprouted sprouted) {
      return sprouted.count() >= MANY_SPROUTS * mostSprouts ? STRESS : SMALL;
    }
    return SMALL;
  }

  private int first(String key, int first, int again) {
    return seen.add(key) ? first : again;
  }
}
