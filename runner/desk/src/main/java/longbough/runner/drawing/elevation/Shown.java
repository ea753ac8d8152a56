package longbough.runner.drawing.elevation;

/** What the trees of one picture show, gathered while they are painted. */
final class Shown {
  boolean openWounds;
  boolean closedWounds;
  boolean sprouts;
  boolean fallen;
}
