package longbough.model.state;

/** Roots as anchorage and as a path for water. */
public final class Roots {
  /** Share of the root plate lost, 0 to 1; recovers slowly. */
  public double plateLost;

  public void copyFrom(Roots other) {
    plateLost = other.plateLost;
  }
}
