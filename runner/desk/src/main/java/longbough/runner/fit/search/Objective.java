package longbough.runner.fit.search;

import java.util.List;

/** A function of points in the unit box, to be made small. */
public interface Objective {

  /** Its value at each of some points; those of one call may be worked out side by side. */
  double[] values(List<double[]> points) throws InterruptedException;
}
