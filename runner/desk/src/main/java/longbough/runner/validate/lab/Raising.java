package longbough.runner.validate.lab;

import longbough.model.pruning.Operation.Raise;

/** Raises that take a share of the live crown's length, as experiments on raising report it. */
public final class Raising {

  private Raising() {}

  /** Clears the lowest part of the crown of a lab's mean tree, 0 to 1 of its length. */
  public static Raise crown(Lab lab, double share) {
    return new Raise(toHeightM(lab, share), Double.NaN);
  }

  /** Clears the stem to a share of the tree's height. */
  public static Raise stem(Lab lab, double share) {
    return new Raise(share * heightM(lab), Double.NaN);
  }

  /** Height to which the stem is clear after that share of the crown's length is gone, m. */
  public static double toHeightM(Lab lab, double share) {
    double top = heightM(lab);
    return top - (top - lab.tree().crownBaseM()) * (1 - share);
  }

  public static double heightM(Lab lab) {
    return lab.tree().heightM();
  }
}
