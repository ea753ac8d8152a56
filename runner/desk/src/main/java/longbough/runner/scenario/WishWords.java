package longbough.runner.scenario;

import longbough.runner.wish.Sector;
import longbough.runner.wish.Wish;
import longbough.runner.yaml.Plain;

/** Wishes in plain words, for lists and pages. */
public final class WishWords {

  private WishWords() {}

  /** What is wanted, e.g. {@code the tree below 14 m}. */
  public static String of(Wish wish) {
    if (wish instanceof Wish.Headroom of) {
      return "nothing below "
          + m(of.heightM())
          + (of.distanceM() > 0 ? " from " + m(of.distanceM()) + " off the trunk" : "")
          + sector(of.sector());
    } else if (wish instanceof Wish.OffTheRoof of) {
      return "no limb further than "
          + m(of.distanceM())
          + " from the trunk, "
          + band(of.fromHeightM(), of.toHeightM())
          + sector(of.sector());
    } else if (wish instanceof Wish.View of) {
      return Plain.percent(of.share())
          + " open sky "
          + band(of.fromHeightM(), of.toHeightM())
          + sector(of.sector());
    } else if (wish instanceof Wish.Light of) {
      return Plain.percent(of.share())
          + " light through the crown at a window "
          + m(of.heightM())
          + " up and "
          + m(of.distanceM())
          + " off, bearing "
          + Plain.number(of.bearingDeg())
          + " degrees";
    } else if (wish instanceof Wish.LimbWeight of) {
      return Plain.percent(of.share())
          + " of the weight off the limb near "
          + m(of.heightM())
          + " and bearing "
          + Plain.number(of.bearingDeg())
          + " degrees";
    }
    return "the tree below " + m(((Wish.HeightLimit) wish).belowM());
  }

  private static String band(double fromM, double toM) {
    return "from " + Plain.number(fromM) + " to " + m(toM) + " up";
  }

  private static String sector(Sector sector) {
    return sector.allRound()
        ? ", all round"
        : ", between bearings "
            + Plain.number(sector.fromDeg())
            + " and "
            + Plain.number(sector.toDeg())
            + " degrees";
  }

  private static String m(double metres) {
    return Plain.number(metres) + " m";
  }
}
