package longbough.model.pruning;

/** Season of a visit; the month counts from midwinter, so it holds in both hemispheres. */
public enum Season {
  /** Leafless, before the buds move. */
  WINTER(2),
  /** Just after the leaves are out. */
  SPRING(5),
  /** Leaves full and hard. */
  SUMMER(7),
  /** Leaves turning. */
  AUTUMN(10);

  private final int month;

  Season(int month) {
    this.month = month;
  }

  /** Month of the visit, 1 being the month of midwinter. */
  public int month() {
    return month;
  }
}
