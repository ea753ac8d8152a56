package longbough.runner.drawing.elevation;

import java.util.List;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.Scatter;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** The trunk with its taper and root flare, shaded on the right; grey where the tree is dead. */
final class TrunkPainter {
  private static final double THINNEST = 0.6;
  private static final double STEP_M = 0.5;
  private static final double FLARE_M = 0.9;

  private final View view;
  private final TreeState state;
  private final TrunkAxis axis;

  TrunkPainter(View view, TreeState state, TrunkAxis axis) {
    this.view = view;
    this.state = state;
    this.axis = axis;
  }

  void paint(List<Shape> onto) {
    boolean alive = state.vitality.alive;
    String bark = alive ? Palette.BARK : Palette.DEADWOOD;
    String shade = alive ? Palette.BARK_SHADE : Palette.DEADWOOD_EDGE;
    onto.add(new Shape.Path(band(-1, 1), Style.fill(bark)));
    onto.add(new Shape.Path(band(0.3, 1), Style.fill(shade).faint(0.75)));
    onto.add(new Shape.Path(furrows(), Style.line(shade, 0.7).faint(0.8)));
    if (cut()) {
      topFace(onto);
    }
  }

  boolean cut() {
    return !state.trunk.leaderIntact && state.trunk.toppedAtM > 0;
  }

  /** Half width of the trunk in the picture at a height. */
  double half(double heightM) {
    Trunk trunk = state.trunk;
    double radius = trunk.stations == 0 ? 0 : trunk.radiusAtM(heightM);
    double lastM = Math.max(0, trunk.stations - 1) * Trunk.STATION_STEP_M;
    if (!cut() && heightM > lastM && trunk.heightM > lastM) {
      radius *= (trunk.heightM - heightM) / (trunk.heightM - lastM);
    }
    double flare = heightM < FLARE_M ? 0.35 * StrictMath.pow(1 - heightM / FLARE_M, 2) : 0;
    return Math.max(THINNEST, view.scale() * radius * (1 + flare));
  }

  /** The part of the trunk between two shares of its half width, -1 left edge to 1 right edge. */
  private Outline band(double from, double to) {
    double top = Math.max(0.1, state.trunk.heightM);
    int steps = (int) Math.ceil(top / STEP_M);
    Outline outline = new Outline();
    for (int step = 0; step <= steps; step++) {
      corner(outline, Math.min(top, step * STEP_M), from, step == 0);
    }
    for (int step = steps; step >= 0; step--) {
      corner(outline, Math.min(top, step * STEP_M), to, false);
    }
    return outline.close();
  }

  private void corner(Outline outline, double heightM, double share, boolean first) {
    double x = view.x(axis.eastM(heightM)) + share * half(heightM);
    if (first) {
      outline.move(x, view.y(heightM));
    } else {
      outline.line(x, view.y(heightM));
    }
  }

  private Outline furrows() {
    Outline lines = new Outline();
    double thickM = Math.min(state.trunk.heightM, 0.75 * state.trunk.heightM);
    for (int line = 0; line < 14; line++) {
      double from = thickM * Scatter.unit(line, 1, 71) * 0.9;
      double to = from + 0.06 * thickM * (0.5 + Scatter.unit(line, 2, 72));
      double share = 0.75 * Scatter.around(line, 3, 73);
      if (half(to) > 3) {
        lines.move(view.x(axis.eastM(from)) + share * half(from), view.y(from));
        lines.line(view.x(axis.eastM(to)) + share * half(to), view.y(to));
      }
    }
    return lines;
  }

  private void topFace(List<Shape> onto) {
    double top = state.trunk.heightM;
    double half = Math.max(2, half(top));
    Style face = Style.fill(Palette.OPEN_WOUND).edged(Palette.WOUND_EDGE, 0.8);
    double x = view.x(axis.eastM(top));
    onto.add(new Shape.Ellipse(x, view.y(top), half, Math.max(1.2, 0.35 * half), face));
  }
}
