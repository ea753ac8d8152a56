package longbough.model;

import java.util.Set;

/**
 * How much of a history is kept besides its yearly rows.
 *
 * @param events whether the dated events are kept
 * @param snapshotYears years at whose end the whole state is copied, 0 being the tree as measured
 */
public record Detail(boolean events, Set<Integer> snapshotYears) {
  /** Yearly rows, visits and wounds only: for the mass of futures. */
  public static final Detail ROWS = new Detail(false, Set.of());

  public Detail {
    snapshotYears = Set.copyOf(snapshotYears);
  }
}
