package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.Flow;
import longbough.model.parameter.ReserveParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReserveBalanceTest {
  private static final double CEILING_KG_C = 10;

  /** Surplus of twelve months, kg C: a made-up year in leaf from May to October. */
  private static final double[] NET_KG_C = {
    -0.2, -0.2, -0.2, -0.3, 0.3, 2.2, 2.6, 2.0, 1.2, 0.3, -0.3, -0.2
  };

  private static YearContext context(double reserveKgC) {
    YearContext context =
        new YearContext(
            new TreeState(), new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = PlayedTrees.parameters("tilia-cordata");
    context.state.pools.reserveCeilingKgC = CEILING_KG_C;
    context.state.pools.reserveFloorKgC = context.parameters.reserve().floor() * CEILING_KG_C;
    context.state.pools.reserveKgC = reserveKgC;
    for (int month = 4; month < 10; month++) {
      context.leafOn[month] = 1;
    }
    context.ledger.open(context.state.totalKgC());
    return context;
  }

  private static void month(YearContext context, int month, double netKgC) {
    context.month = month;
    context.state.pools.reserveKgC += netKgC;
    context.netKgC = netKgC;
    new ReserveBalance().run(context);
  }

  /**
   * dC/dt = 2 (1 + sin 2 pi t) - 1.3 C from 1 stands at 1.233218027839 at t = 10, by its closed
   * form and by the integrator that the next test relies on; both to 1e-9.
   */
  @Test
  void theReferenceIntegratorMeetsTheClosedForm() {
    double a = 1.3;
    double w = 2 * Math.PI;
    double cosine = -2 * w / (a * a + w * w);
    double sine = 2 * a / (a * a + w * w);
    double closed =
        2 / a
            + cosine * Math.cos(10 * w)
            + sine * Math.sin(10 * w)
            + (1 - 2 / a - cosine) * Math.exp(-10 * a);
    assertThat(closed).isCloseTo(1.233218027839, within(1e-9));
    double[] at = {1};
    integrate((t, y) -> 2 * (1 + Math.sin(w * t)) - a * y[0], at, 10);
    assertThat(at[0]).isCloseTo(1.233218027839, within(1e-9));
  }

  private interface Slope {
    double of(double t, double[] y);
  }

  private static void integrate(Slope slope, double[] y, double until) {
    FirstOrderDifferentialEquations equations =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return y.length;
          }

          @Override
          public void computeDerivatives(double t, double[] state, double[] out) {
            out[0] = slope.of(t, state);
          }
        };
    new DormandPrince853Integrator(1e-10, 0.1, 1e-13, 1e-13)
        .integrate(equations, 0, y.clone(), until, y);
  }

  /** Without income, what lies above the set point decays exponentially, by the closed form. */
  @Test
  void whatLiesAboveTheSetPointIsReleasedExponentially() {
    YearContext context = context(9.5);
    ReserveParameters p = context.parameters.reserve();
    double setPoint = p.setPoint() * CEILING_KG_C;
    for (int n = 1; n <= 3; n++) {
      month(context, 7 + n, 0);
      double left = setPoint + (9.5 - setPoint) * Math.exp(-p.releaseShare() * n);
      assertThat(context.state.pools.reserveKgC).isCloseTo(left, within(1e-9));
    }
  }

  /**
   * A year in leaf against the same balance, written down here a second time and integrated by
   * Dormand and Prince's method of order 8, for stores from twenty times a month's income down to a
   * small tree's, which holds less than it earns in a month. The process solves the balance in
   * closed form, so that steps of a month and of a week both meet it.
   */
  @ParameterizedTest
  @CsvSource({
    "1.5, 1",
    "3, 1",
    "5, 1",
    "7, 1",
    "8.5, 1",
    "1.5, 0.1",
    "8.5, 0.1",
    "5, 10",
    "5, 40",
    "9.9, 40"
  })
  void stepsFollowTheContinuousBalance(double startKgC, double income) {
    assertThat(worstError(startKgC, 1, income)).isLessThan(1e-7 * CEILING_KG_C);
    assertThat(worstError(startKgC, 4, income)).isLessThan(1e-7 * CEILING_KG_C);
  }

  /** Largest departure from the continuous balance at the end of a month, kg C. */
  private static double worstError(double startKgC, int steps, double income) {
    YearContext context = context(startKgC);
    ReserveParameters p = context.parameters.reserve();
    double[] smooth = {startKgC};
    double worst = 0;
    double sum = 0;
    for (int month = 5; month <= 10; month++) {
      double net = income * NET_KG_C[month - 1];
      sum += net;
      context.span = 1.0 / steps;
      for (int step = 0; step < steps; step++) {
        month(context, month, net / steps);
      }
      double share =
          month <= 6
              ? p.springSetPoint()
              : month == 7 ? (p.springSetPoint() + p.setPoint()) / 2 : p.setPoint();
      integrate((t, y) -> rate(p, share * CEILING_KG_C, y[0], net), smooth, 1);
      worst = Math.max(worst, Math.abs(context.state.pools.reserveKgC - smooth[0]));
    }
    double kept = context.state.pools.reserveKgC + context.state.pools.growthBudgetKgC;
    assertThat(context.ledger.amountKgC(Flow.OVERFLOW)).isZero();
    assertThat(kept).as("nothing lost").isCloseTo(startKgC + sum, within(1e-12 * (1 + sum)));
    return worst;
  }

  /** The balance as the Javadoc of the process states it. */
  private static double rate(ReserveParameters p, double setPoint, double reserve, double net) {
    double stored =
        reserve < setPoint
            ? Math.min(1, p.storageLeast() + p.storageSlope() * (1 - reserve / setPoint))
            : p.storageLeast() * (CEILING_KG_C - reserve) / (CEILING_KG_C - setPoint);
    return stored * net - p.releaseShare() * Math.max(0, reserve - setPoint);
  }

  @Test
  void aPoorReserveStoresMoreAndGrowsLess() {
    double lastGrowth = -1;
    for (double reserve = 1; reserve < 10; reserve += 0.5) {
      YearContext context = context(reserve);
      month(context, 7, 1);
      double growth = context.state.pools.growthBudgetKgC;
      assertThat(growth).isGreaterThanOrEqualTo(lastGrowth);
      assertThat(context.state.pools.reserveKgC).isLessThanOrEqualTo(CEILING_KG_C);
      lastGrowth = growth;
    }
    assertThat(lastGrowth).isPositive();
  }

  @Test
  void sugarThatTheWoodCannotHoldIsLostAndBooked() {
    YearContext context = context(9.9);
    month(context, 1, 2);
    assertThat(context.state.pools.reserveKgC).isCloseTo(CEILING_KG_C, within(1e-12));
    assertThat(context.ledger.amountKgC(Flow.OVERFLOW)).isCloseTo(1.9, within(1e-12));
  }
}
