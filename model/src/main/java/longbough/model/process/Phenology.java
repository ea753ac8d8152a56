package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.SpeciesParameters;

/**
 * When this year's leaves are out: a share by month that rises with the monthly mean temperature in
 * spring and falls with it in autumn.
 *
 * <pre>
 * f_m = min(1, max(0, (T_m - T0) / w + 1/2)),  never falling before the height of summer, never rising after
 * </pre>
 *
 * T monthly mean (degC), in spring also that of a week, read off straight lines between the middles
 * of the months; T0 the species' leaf-out (spring) or leaf-fall (autumn) temperature; w the span
 * over which a canopy unfolds (4 degC, assumption). Evergreens use the spring share for their new
 * cohort. Every tree is in leaf by midsummer; deciduous trees are bare in the two months around
 * midwinter.
 */
public final class Phenology implements Process {
  private static final double SPAN_C = 4;
  private static final int MIDSUMMER = 6;
  private static final int LAST = 11;

  @Override
  public String name() {
    return "phenology";
  }

  @Override
  public List<String> sources() {
    return List.of();
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of();
  }

  @Override
  public void run(YearContext context) {
    SpeciesParameters s = context.parameters.species();
    double[] on = context.leafOn;
    double highest = 0;
    for (int month = 0; month < MIDSUMMER; month++) {
      double warm = share(context.site.temperatureC[month], s.leafOutTemperatureC());
      highest = Math.max(highest, month < 2 ? 0 : warm);
      on[month] = highest;
    }
    on[MIDSUMMER] = 1;
    callLeaves(context, s.leafOutTemperatureC());
    double lowest = 1;
    for (int month = MIDSUMMER + 1; month <= LAST; month++) {
      boolean bare = !s.evergreen() && month == LAST;
      lowest =
          Math.min(
              lowest, bare ? 0 : share(context.site.temperatureC[month], s.leafFallTemperatureC()));
      on[month] = s.evergreen() ? 1 : lowest;
    }
  }

  /** The same spring by weeks, whose temperatures run straight between the middles of months. */
  private static void callLeaves(YearContext context, double thresholdC) {
    double[] t = context.site.temperatureC;
    double[] called = context.leafCalled;
    double highest = 0;
    for (int i = 0; i < called.length; i++) {
      int month = i / YearContext.WEEKS;
      double middle = (i % YearContext.WEEKS + 0.5) / YearContext.WEEKS - 0.5;
      int other = Math.min(LAST, Math.max(0, middle < 0 ? month - 1 : month + 1));
      double warm = t[month] + Math.abs(middle) * (t[other] - t[month]);
      highest = Math.max(highest, month < 2 ? 0 : share(warm, thresholdC));
      called[i] = month < MIDSUMMER ? highest : 1;
    }
  }

  private static double share(double temperatureC, double threshold) {
    return Math.min(1, Math.max(0, (temperatureC - threshold) / SPAN_C + 0.5));
  }
}
