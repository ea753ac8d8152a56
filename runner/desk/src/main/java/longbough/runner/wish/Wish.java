package longbough.runner.wish;

/** One thing that a client wants of the tree; metres, degrees clockwise from north, shares. */
public sealed interface Wish {

  /** The word used in scenario files and tables. */
  String word();

  /** Nothing hangs lower than this over a path that begins at a distance from the trunk. */
  record Headroom(double heightM, double distanceM, Sector sector) implements Wish {
    @Override
    public String word() {
      return "headroom";
    }
  }

  /** No limb reaches further from the trunk than this, in a sector and a height band. */
  record OffTheRoof(Sector sector, double fromHeightM, double toHeightM, double distanceM)
      implements Wish {
    @Override
    public String word() {
      return "off_the_roof";
    }
  }

  /** A share of open sky, seen outward from the trunk in a sector and a height band. */
  record View(Sector sector, double fromHeightM, double toHeightM, double share) implements Wish {
    @Override
    public String word() {
      return "view";
    }
  }

  /** A share of light through the crown, seen from a window. */
  record Light(double bearingDeg, double distanceM, double heightM, double share) implements Wish {
    @Override
    public String word() {
      return "light";
    }
  }

  /** The tree is no higher than this. */
  record HeightLimit(double belowM) implements Wish {
    @Override
    public String word() {
      return "height_limit";
    }
  }

  /** A share of the weight of the limb that stands nearest to a height and bearing is taken off. */
  record LimbWeight(double heightM, double bearingDeg, double share) implements Wish {
    @Override
    public String word() {
      return "limb_weight";
    }
  }
}
