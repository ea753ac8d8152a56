package longbough.runner.assumption;

import java.util.Comparator;
import java.util.List;
import longbough.runner.compare.Metric;
import longbough.shared.source.Basis;
import longbough.shared.source.Sourced;

/**
 * One parameter and all that the verdict owes to it.
 *
 * @param parameter name, range, unit, basis and source
 * @param shifts one for each measure and each regime but the best
 * @param futures how many it was played through; fewer than asked for where it could move nothing
 * @param failure why it could not be played at an end of its range; empty where it could
 */
public record Assumption(Sourced parameter, List<Shift> shifts, int futures, String failure) {

  public Assumption {
    shifts = List.copyOf(shifts);
  }

  /** The group of parameters it belongs to, e.g. {@code light}. */
  public String group() {
    String name = parameter.name();
    return name.substring(0, Math.max(0, name.indexOf('.')));
  }

  /** The largest effect on any measure that is beyond chance, else 0. */
  public double weight() {
    return shifts.stream().mapToDouble(Shift::toldEffect).max().orElse(0);
  }

  /** The largest effect on one measure that is beyond chance, else 0. */
  public double weight(Metric metric) {
    return shifts.stream()
        .filter(shift -> shift.metric() == metric)
        .mapToDouble(Shift::toldEffect)
        .max()
        .orElse(0);
  }

  /** The shift that gives it its weight, or the largest if none is beyond chance; may be null. */
  public Shift strongest() {
    return shifts.stream()
        .max(Comparator.comparingDouble(Shift::toldEffect).thenComparingDouble(Shift::effect))
        .orElse(null);
  }

  /** Shifts at whose ends another regime is preferred. */
  public List<Shift> turns() {
    return shifts.stream().filter(Shift::turns).toList();
  }

  /** Whether no published source stands behind the number. */
  public boolean unpublished() {
    return parameter.basis() != Basis.PUBLISHED;
  }
}
