package longbough.runner.validate.lab;

import longbough.model.history.YearColumn;
import longbough.model.pruning.Operation.Raise;

/** Raises that take a share of the live crown's length, as experiments on raising report it. */
public final class Raising {

  private Raising() {}

  /** Clears the lowest part of the crown of a lab's mean tree, 0 to 1 of its length. */
  public static Raise crown(Lab lab, double share) {
    return new Raise(toHeightM(lab, share), Double.NaN);
  }

  /** Clears the lowest part of the crown that the trees have at a year's end, means of them. */
  public static Raise crown(Played before, int year, double share) {
    double top = before.mean(YearColumn.HEIGHT_M, year);
    double crown = top * before.mean(YearColumn.LIVE_CROWN_RATIO, year);
    return new Raise(toHeightM(top, crown, share), Double.NaN);
  }

  /** Clears the stem to a share of the tree's height. */
  public static Raise stem(Lab lab, double share) {
    return new Raise(share * heightM(lab), Double.NaN);
  }

  /** Height to which the stem is clear after that share of the crown's length is gone, m. */
  public static double toHeightM(Lab lab, double share) {
    double top = heightM(lab);
    return toHeightM(top, top - lab.tree().crownBaseM(), share);
  }

  private static double toHeightM(double topM, double crownM, double share) {
    return topM - crownM * (1 - share);
  }

  public static double heightM(Lab lab) {
    return lab.tree().heightM();
  }
}
