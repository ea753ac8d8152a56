package longbough.model.process;

import longbough.model.numeric.Fast;
import longbough.model.parameter.ReserveParameters;

/**
 * The course of the reserve while a steady net income flows, solved exactly: the equation of {@link
 * ReserveBalance} is linear in R on each of three pieces, and R is followed from piece to piece.
 * Needed because the store of a small tree holds less than it earns in a month; a single step over
 * the month would empty it.
 *
 * @param ceilingKgC C, most the living wood can hold, kg C
 * @param setPointKgC R*, what is defended before wood grows, kg C
 * @param storedLeast s0, share of income stored at the set point, 1
 * @param storedRise s1, rise of that share as the reserve falls to nothing, 1
 * @param release g, release of what lies above the set point, 1/month
 */
public record ReserveCourse(
    double ceilingKgC, double setPointKgC, double storedLeast, double storedRise, double release) {

  private static final int PIECES = 3;
  private static final int LONGEST_DAYS = 6;
  private static final int RISE_MONTHS = 2;

  public static ReserveCourse of(ReserveParameters p, double ceilingKgC, int month) {
    return new ReserveCourse(
        ceilingKgC,
        setPoint(p, month) * ceilingKgC,
        p.storageLeast(),
        p.storageSlope(),
        p.releaseShare());
  }

  /** Set point by month, 1 the month of midwinter: low while days lengthen, then rising. */
  private static double setPoint(ReserveParameters p, int month) {
    double autumn = Math.min(1, Math.max(0, (month - LONGEST_DAYS) / (double) RISE_MONTHS));
    return p.springSetPoint() + autumn * (p.setPoint() - p.springSetPoint());
  }

  /**
   * The reserve after a span of time.
   *
   * @param startKgC at its beginning, at most the ceiling
   * @param incomeKgC net income that arrives evenly over a month, kg C/month; may be negative
   * @param months the span
   */
  public double after(double startKgC, double incomeKgC, double months) {
    double now = startKgC;
    double left = months;
    for (int piece = 0; piece < PIECES && left > 0; piece++) {
      double slope = slope(now, incomeKgC);
      double flow = rate(now, incomeKgC);
      double end = edge(now, flow);
      double time = timeTo(end - now, flow, slope);
      if (time >= left) {
        return now + gain(left, flow, slope);
      }
      now = end;
      left -= time;
    }
    return now;
  }

  /** dR/dt at a reserve, kg C/month. */
  public double rate(double reserveKgC, double incomeKgC) {
    double released = release * Math.max(0, reserveKgC - setPointKgC);
    return incomeKgC * (incomeKgC > 0 ? storedShare(reserveKgC) : 1) - released;
  }

  private double storedShare(double reserveKgC) {
    if (reserveKgC >= setPointKgC) {
      return storedLeast * (ceilingKgC - reserveKgC) / (ceilingKgC - setPointKgC);
    }
    return Math.min(1, storedLeast + storedRise * (1 - reserveKgC / setPointKgC));
  }

  /** Reserve up to which all income is stored, kg C. */
  private double hungryKgC() {
    return Math.max(0, setPointKgC * (1 - (1 - storedLeast) / storedRise));
  }

  /** d(dR/dt)/dR on the piece that the reserve is on or about to enter. */
  private double slope(double reserveKgC, double incomeKgC) {
    boolean above =
        reserveKgC > setPointKgC || reserveKgC == setPointKgC && rate(reserveKgC, incomeKgC) > 0;
    if (above) {
      double filling = incomeKgC > 0 ? storedLeast * incomeKgC / (ceilingKgC - setPointKgC) : 0;
      return -release - filling;
    }
    boolean hungry = reserveKgC < hungryKgC();
    return incomeKgC <= 0 || hungry ? 0 : -storedRise * incomeKgC / setPointKgC;
  }

  /** Where the piece ends in the direction of the flow, kg C. */
  private double edge(double reserveKgC, double flow) {
    if (flow > 0) {
      return reserveKgC < hungryKgC()
          ? hungryKgC()
          : reserveKgC < setPointKgC ? setPointKgC : Double.POSITIVE_INFINITY;
    }
    return reserveKgC > setPointKgC ? setPointKgC : Double.NEGATIVE_INFINITY;
  }

  /** Time in which a linear flow covers a distance; infinite where it never arrives. */
  private static double timeTo(double distance, double flow, double slope) {
    if (flow == 0 || Double.isInfinite(distance)) {
      return Double.POSITIVE_INFINITY;
    }
    if (slope == 0) {
      return distance / flow;
    }
    double inside = 1 + slope * distance / flow;
    return inside <= 0 ? Double.POSITIVE_INFINITY : Fast.log(inside) / slope;
  }

  private static double gain(double time, double flow, double slope) {
    return slope == 0 ? flow * time : flow * (Fast.exp(slope * time) - 1) / slope;
  }
}
