package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * F28: the reserve-shaped equation dC/dt = 2 (1 + sin 2 pi t) - 1.3 C from 1, by Commons Math's
 * Dormand-Prince 8(5,3), against its closed form at t = 10.
 */
public final class ClosedForms implements Experiment {
  private static final double CLOSED_FORM = 1.233218027839;
  private static final double TOLERANCE = 1e-9;

  @Override
  public List<String> checks() {
    return List.of("F28");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] c = {1};
    new DormandPrince853Integrator(1e-8, 0.1, 1e-13, 1e-13).integrate(new Reserve(), 0, c, 10, c);
    boolean met = Math.abs(c[0] - CLOSED_FORM) <= TOLERANCE;
    return List.of(
        new Finding(
            "F28",
            String.format(Locale.ROOT, "%.12f", c[0]),
            CLOSED_FORM + " within 1e-9",
            met,
            met,
            "The reference integrator itself; the monthly step of the model is held against it in a test."));
  }

  private static final class Reserve implements FirstOrderDifferentialEquations {
    @Override
    public int getDimension() {
      return 1;
    }

    @Override
    public void computeDerivatives(double t, double[] c, double[] rate) {
      rate[0] = 2 * (1 + Math.sin(2 * Math.PI * t)) - 1.3 * c[0];
    }
  }
}
