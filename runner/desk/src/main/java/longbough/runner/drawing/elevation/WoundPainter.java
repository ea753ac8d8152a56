package longbough.runner.drawing.elevation;

import java.util.List;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.Scatter;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Wounds that face the viewer: open ones as a filled face with a rim, closed ones as a ring. */
final class WoundPainter {
  private static final double LEAST = 2.4;
  private static final double SMALLEST_LIMB_CUT_M = 0.04;
  private static final double HIDDEN_BEYOND = 0.25;

  private final View view;
  private final TreeState state;
  private final TrunkAxis axis;
  private final TrunkPainter trunk;

  WoundPainter(View view, TreeState state, TrunkAxis axis, TrunkPainter trunk) {
    this.view = view;
    this.state = state;
    this.axis = axis;
    this.trunk = trunk;
  }

  /** Whether any wound of the kind can be seen. */
  boolean shows(boolean open) {
    for (int wound = 0; wound < state.wounds.count; wound++) {
      if (state.wounds.open(wound) == open && visible(wound)) {
        return true;
      }
    }
    return false;
  }

  void paint(LimbLine[] lines, List<Shape> onto) {
    Wounds wounds = state.wounds;
    for (int wound = 0; wound < wounds.count; wound++) {
      if (visible(wound)) {
        if (wounds.limb[wound] == Wounds.ON_TRUNK) {
          onTrunk(wound, onto);
        } else if (lines[wounds.limb[wound]] != null) {
          onLimb(wound, lines[wounds.limb[wound]], onto);
        }
      }
    }
  }

  private boolean visible(int wound) {
    Wounds wounds = state.wounds;
    if (wounds.acrossStem[wound] || wounds.limb[wound] == Wounds.GONE) {
      return false;
    }
    if (wounds.limb[wound] == Wounds.ON_TRUNK) {
      return StrictMath.cos(wounds.azimuthRad[wound]) < HIDDEN_BEYOND
          && wounds.heightM[wound] <= state.trunk.heightM;
    }
    boolean there = state.limbs.status[wounds.limb[wound]] != LimbStatus.EMPTY.code();
    return there && wounds.open(wound) && wounds.faceWidthM[wound] >= SMALLEST_LIMB_CUT_M;
  }

  private void onTrunk(int wound, List<Shape> onto) {
    Wounds wounds = state.wounds;
    double height = Math.max(0, wounds.heightM[wound]);
    double half = trunk.half(height);
    double sideways = StrictMath.sin(wounds.azimuthRad[wound]);
    double turned = Math.max(0.35, -StrictMath.cos(wounds.azimuthRad[wound]));
    double x = view.x(axis.eastM(height)) + 0.92 * half * sideways;
    face(wound, x, view.y(height), turned, Math.min(LEAST, 0.6 * half), onto);
  }

  private void onLimb(int wound, LimbLine line, List<Shape> onto) {
    Spot spot = line.at(0.2 + 0.6 * Scatter.unit(wound, line.limb, 61));
    face(wound, view.x(spot.eastM()), view.y(spot.heightM()), 1, LEAST, onto);
  }

  private void face(int wound, double x, double y, double turned, double least, List<Shape> onto) {
    Wounds wounds = state.wounds;
    double wide = Math.max(least, view.scale() * wounds.faceWidthM[wound] / 2) * turned;
    double high = Math.max(least, view.scale() * wounds.faceHeightM[wound] / 2);
    if (wounds.open(wound)) {
      onto.add(
          new Shape.Ellipse(
              x, y, wide + 0.4 * least, high + 0.4 * least, Style.fill(Palette.WOUNDWOOD)));
      double openWide = Math.max(0.6 * least, view.scale() * wounds.openWidthM[wound] / 2) * turned;
      double openHigh = Math.max(0.6 * least, view.scale() * wounds.openHeightM[wound] / 2);
      Style style = Style.fill(Palette.OPEN_WOUND).edged(Palette.WOUND_EDGE, 0.8);
      onto.add(new Shape.Ellipse(x, y, openWide, openHigh, style));
    } else {
      Style ring = Style.line(Palette.WOUNDWOOD, 1.2);
      onto.add(new Shape.Ellipse(x, y, wide, high, ring));
      Outline seam = new Outline().move(x, y - high * 0.5).line(x, y + high * 0.5);
      onto.add(new Shape.Path(seam, Style.line(Palette.WOUND_EDGE, 0.8)));
    }
  }
}
