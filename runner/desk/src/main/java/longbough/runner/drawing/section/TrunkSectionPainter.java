package longbough.runner.drawing.section;

import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.Placement;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Wood, decay columns, barrier zones and wound faces of one trunk cut open lengthwise. */
final class TrunkSectionPainter {
  private static final double LEAST_COLUMN_M = 0.02;
  private static final double THINNEST_BRANCH = 2;

  private final TreeState state;
  private final TrunkProfile profile;

  TrunkSectionPainter(TreeState state, TrunkProfile profile) {
    this.state = state;
    this.profile = profile;
  }

  /** Wounds whose decay in the trunk is large enough to draw. */
  static int columns(TreeState state) {
    int count = 0;
    for (int wound = 0; wound < state.wounds.count; wound++) {
      count += hasColumn(state, wound) ? 1 : 0;
    }
    return count;
  }

  List<Shape> paint(boolean[] shown) {
    List<Shape> onto = new ArrayList<>();
    double core = Math.sqrt(Math.max(0, Math.min(1, 1 - state.trunk.sapwoodShare)));
    onto.add(new Shape.Path(profile.body(1), Style.fill(Palette.SAPWOOD).edged(Palette.BARK, 2)));
    shown[SectionLegend.SAPWOOD] = true;
    if (core > 0.02) {
      onto.add(new Shape.Path(profile.body(core), Style.fill(Palette.HEARTWOOD)));
      shown[SectionLegend.HEARTWOOD] = true;
    }
    for (int wound = 0; wound < state.wounds.count; wound++) {
      if (hasBranch(wound)) {
        Style wood = Style.fill(Palette.BRANCH).edged(Palette.RING, 0.8);
        onto.add(new Shape.Path(profile.branch(wound, Double.MAX_VALUE), wood));
        shown[SectionLegend.BRANCH] |=
            heldInCore(state, wound) || state.wounds.columnDownM[wound] < profile.branchM(wound);
      }
    }
    for (int wound = 0; wound < state.wounds.count; wound++) {
      if (hasColumn(state, wound) && profile.showsColumn(wound)) {
        boolean held = heldInCore(state, wound);
        Style decay = Style.fill(held ? Palette.HELD : Palette.DECAY);
        onto.add(new Shape.Path(profile.column(wound), decay.edged(Palette.DECAY_EDGE, 0.8)));
        shown[held ? SectionLegend.HELD : SectionLegend.DECAY] = true;
        if (!held && hasBranch(wound)) {
          Outline branch = profile.branch(wound, state.wounds.columnDownM[wound]);
          onto.add(new Shape.Path(branch, Style.fill(Palette.DECAY)));
        }
      }
    }
    for (int wound = 0; wound < state.wounds.count; wound++) {
      if (hasColumn(state, wound)
          && profile.showsColumn(wound)
          && !state.wounds.acrossStem[wound]) {
        double length = profile.y(profile.lowM(wound)) - profile.y(profile.highM(wound));
        onto.addAll(Barrier.draw(profile.barrier(wound), length));
        shown[SectionLegend.BARRIER] = true;
      }
    }
    for (int wound = 0; wound < state.wounds.count; wound++) {
      if (onTrunk(state, wound) && profile.shows(state.wounds.heightM[wound])) {
        face(wound, onto, shown);
      }
    }
    if (state.vitality.worstDecayAreaFraction > 0
        && profile.shows(TrunkSectionDrawing.worstHeightM(state))) {
      worst(onto);
      shown[SectionLegend.WORST] = true;
    }
    return onto;
  }

  private static boolean onTrunk(TreeState state, int wound) {
    return state.wounds.limb[wound] == Wounds.ON_TRUNK
        && state.wounds.heightM[wound] <= state.trunk.heightM + 0.01;
  }

  private static boolean hasColumn(TreeState state, int wound) {
    Wounds wounds = state.wounds;
    double length = wounds.columnUpM[wound] + wounds.columnDownM[wound];
    boolean deep = wounds.columnDepthM[wound] > 0 || wounds.acrossStem[wound];
    return onTrunk(state, wound) && deep && length > LEAST_COLUMN_M;
  }

  // The wood of a removed branch, where it is thick enough to be seen.
  private boolean hasBranch(int wound) {
    double diameter = state.wounds.cutDiameterM[wound];
    return onTrunk(state, wound)
        && !state.wounds.acrossStem[wound]
        && profile.shows(state.wounds.heightM[wound] - diameter / 2)
        && profile.shows(state.wounds.heightM[wound] + diameter / 2)
        && profile.unitsUp() * diameter > THINNEST_BRANCH;
  }

  /** A column no wider than the branch that was removed has not entered the trunk's own wood. */
  private static boolean heldInCore(TreeState state, int wound) {
    Wounds wounds = state.wounds;
    return wounds.placement[wound] != Placement.FLUSH.ordinal()
        && !wounds.acrossStem[wound]
        && wounds.columnHalfWidthM[wound] <= wounds.cutDiameterM[wound] / 2;
  }

  private void face(int wound, List<Shape> onto, boolean[] shown) {
    Wounds wounds = state.wounds;
    double height = wounds.heightM[wound];
    double x = profile.x(profile.side(wound) * profile.radiusM(height));
    if (!wounds.open(wound)) {
      double out = 5 * profile.side(wound);
      Outline tick =
          new Outline().move(x - out, profile.y(height)).line(x + out, profile.y(height));
      onto.add(new Shape.Path(tick, Style.line(Palette.WOUND_EDGE, 1.6)));
      shown[SectionLegend.CLOSED] = true;
    } else if (wounds.acrossStem[wound]) {
      double half = profile.radiusM(height);
      Outline cut = new Outline().move(profile.x(-half), profile.y(height));
      cut.line(profile.x(half), profile.y(height));
      onto.add(new Shape.Path(cut, Style.line(Palette.OPEN_WOUND, 5)));
      shown[SectionLegend.OPEN] = true;
    } else {
      openFace(wound, onto);
      shown[SectionLegend.OPEN] = true;
    }
  }

  /** The face lies where the surface was; the wood grown since leaves a notch before it. */
  private void openFace(int wound, List<Shape> onto) {
    double height = state.wounds.heightM[wound];
    double half = Math.max(LEAST_COLUMN_M, state.wounds.openHeightM[wound] / 2);
    double side = profile.side(wound);
    double low = profile.y(height - half);
    double high = profile.y(height + half);
    double face = profile.x(side * profile.boundM(wound, height));
    double surface = profile.x(side * profile.radiusM(height)) + 2.5 * side;
    Outline notch = new Outline().move(face, low).line(surface, low + 2).line(surface, high - 2);
    onto.add(new Shape.Path(notch.line(face, high).close(), Style.fill("#ffffff")));
    Outline open = new Outline().move(face, low).line(face, high);
    onto.add(new Shape.Path(open, Style.line(Palette.OPEN_WOUND, 4)));
  }

  private void worst(List<Shape> onto) {
    double height = TrunkSectionDrawing.worstHeightM(state);
    double half = profile.radiusM(height);
    double y = profile.y(height);
    Outline line = new Outline().move(profile.x(-half) - 16, y).line(profile.x(half) + 16, y);
    onto.add(new Shape.Path(line, Style.line(Palette.TEXT, 1.2).dashed(4)));
  }
}
