package longbough.runner.fit;

import java.util.List;
import java.util.Map;

/**
 * One parameter that a fit has set.
 *
 * @param parameter the parameter as it stood
 * @param after its new value
 * @param gain by how much loss and pull together would rise if only this one were put back
 * @param changes by training check, how its loss would change if only this one were put back
 */
public record Fitted(
    FreeParameter parameter, double after, double gain, Map<String, Double> changes) {
  /** A change of a check's loss below this isn't worth naming. */
  private static final double WORTH_NAMING = 0.02;

  public double before() {
    return parameter.row().value();
  }

  /** Whether it lies at an end of its range, which says that the range or the model is wrong. */
  public boolean atEnd() {
    return after == parameter.row().range().low() || after == parameter.row().range().high();
  }

  /** The training checks that its new value moves, the most moved first. */
  public List<String> checks() {
    return Influence.mostMoved(changes).stream()
        .filter(check -> Math.abs(changes.get(check)) >= WORTH_NAMING)
        .toList();
  }
}
