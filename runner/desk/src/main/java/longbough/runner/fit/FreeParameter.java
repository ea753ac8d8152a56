package longbough.runner.fit;

import longbough.shared.source.Sourced;

/**
 * One parameter that a fit may set, within the range of its row.
 *
 * @param row its row in the parameter files
 * @param why why it may be fitted
 */
public record FreeParameter(Sourced row, String why) {
  /** Steps into which a range is divided at the least when a value is rounded. */
  private static final double FINEST = 200;

  private static final double TEN = 10;

  public String name() {
    return row.name();
  }

  /** Where a value lies in the range: 0 at its lower end, 1 at its upper end. */
  public double share(double value) {
    return (value - row.range().low()) / row.range().width();
  }

  /** The value at a place in the range, with no more digits than a fit can tell apart. */
  public double value(double share) {
    double exact = row.range().low() + share * row.range().width();
    double power = Math.ceil(-Math.log10(row.range().width() / FINEST));
    double scale = Math.pow(TEN, Math.abs(power));
    double rounded =
        power >= 0 ? Math.rint(exact * scale) / scale : Math.rint(exact / scale) * scale;
    return row.range().clamp(rounded);
  }
}
