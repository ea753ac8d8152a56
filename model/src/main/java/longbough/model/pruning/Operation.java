package longbough.model.pruning;

/**
 * One thing done to the tree on a visit, in the trade's words. A value that is not given is {@link
 * Double#NaN}. Shares are of what is there at that moment, 0 to 1.
 */
public sealed interface Operation {

  /** The word used in scenario files and tables. */
  String word();

  /** Removes dead limbs and stubs whose base is at least this thick. */
  record RemoveDeadwood(double overDiameterM) implements Operation {
    @Override
    public String word() {
      return "remove_deadwood";
    }
  }

  /** Takes a share of the live foliage out of the crown, branch by branch. */
  record Thin(double share, Where where, CutKind cut) implements Operation {
    @Override
    public String word() {
      return "thin";
    }
  }

  /** Takes the lowest limbs off, up to a height or until the live crown ratio is this low. */
  record Raise(double toHeightM, double toLiveCrownRatio) implements Operation {
    @Override
    public String word() {
      return "raise";
    }
  }

  /** Opens a view: a height band within a sector of the compass (clockwise, degrees). */
  record OpenWindow(
      double fromHeightM,
      double toHeightM,
      double fromBearingDeg,
      double toBearingDeg,
      double share)
      implements Operation {
    @Override
    public String word() {
      return "open_window";
    }
  }

  /** Shortens the crown by shares of height and of spread, to laterals or to stubs. */
  record Reduce(double heightShare, double spreadShare, boolean toLaterals) implements Operation {
    @Override
    public String word() {
      return "reduce";
    }
  }

  /**
   * Cuts one part of the crown back to laterals. A line: in a sector of the compass (clockwise,
   * degrees) and a height band nothing reaches further from the trunk than this. Or a share: the
   * limbs of the sector that leave the trunk within the band lose so much of their length.
   */
  record CutBack(
      double fromHeightM,
      double toHeightM,
      double fromBearingDeg,
      double toBearingDeg,
      double toReachM,
      double share)
      implements Operation {
    @Override
    public String word() {
      return "cut_back";
    }
  }

  /** Cuts everything above a height across, whatever stands there (height, or share of height). */
  record Top(double atHeightM, double atHeightShare) implements Operation {
    @Override
    public String word() {
      return "top";
    }
  }

  /** Shears the outline all round by a share of the crown's radius. */
  record Shear(double depthShare) implements Operation {
    @Override
    public String word() {
      return "shear";
    }
  }

  /** Takes off a share of the sprouts, at the base or (heading) leaving a peg. */
  record StripSprouts(double share, CutKind cut) implements Operation {
    @Override
    public String word() {
      return "strip_sprouts";
    }
  }

  /** Keeps one of every n sprouts and takes the others off at the base. */
  record SelectSprouts(double keepOneOf) implements Operation {
    @Override
    public String word() {
      return "select_sprouts";
    }
  }

  /** After topping: clears stubs, chooses sprouts (one of n) and lets the best lead again. */
  record RestoreTopped(double keepOneOf) implements Operation {
    @Override
    public String word() {
      return "restore_topped";
    }
  }
}
