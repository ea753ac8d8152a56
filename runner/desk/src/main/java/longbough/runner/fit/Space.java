package longbough.runner.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import longbough.shared.source.ParameterTable;

/**
 * The free parameters as the axes of a box, each from 0 (lower end of its range) to 1.
 *
 * @param axes the free parameters
 * @param base all general parameters as they stand
 */
public record Space(List<FreeParameter> axes, ParameterTable base) {

  /** Where the parameters stand in the files. */
  public double[] start() {
    return axes.stream().mapToDouble(axis -> axis.share(axis.row().value())).toArray();
  }

  /** The values at a point; those of the files where the point doesn't leave them. */
  public double[] values(double[] point) {
    double[] values = new double[point.length];
    for (int i = 0; i < point.length; i++) {
      FreeParameter axis = axes.get(i);
      boolean untouched = point[i] == axis.share(axis.row().value());
      values[i] = untouched ? axis.row().value() : axis.value(point[i]);
    }
    return values;
  }

  /** All general parameters with the values at a point. */
  public ParameterTable table(double[] point) {
    double[] values = values(point);
    ParameterTable table = base;
    for (int i = 0; i < values.length; i++) {
      table = table.with(axes.get(i).name(), values[i]);
    }
    return table;
  }

  /** The point at which one parameter has moved. */
  public double[] moved(double[] point, int axis, double to) {
    double[] other = Arrays.copyOf(point, point.length);
    other[axis] = to;
    return other;
  }

  /** The box of some of the axes, in the order given. */
  public Space of(List<Integer> chosen) {
    List<FreeParameter> some = new ArrayList<>();
    chosen.forEach(axis -> some.add(axes.get(axis)));
    return new Space(some, base);
  }
}
