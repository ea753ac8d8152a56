package longbough.runner.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Limbs with their side branches; dead ones bare and grey, nearer ones darker. */
final class WoodPainter {
  private static final double THINNEST = 0.45;
  private static final double TWIG = 0.9;
  private static final double TOO_SHORT_TO_BEND = 20;
  private static final double BLUNT_CUT = 0.16;

  /** Share of its full leaf area at which a zone hides its side branches. */
  private static final double HIDING = 0.6;

  /** So few marks hide nothing. */
  private static final int FEW_MARKS = 4;

  private static final int BARE_TWIGS = 2;

  private final View view;
  private final TreeState state;
  private final double clusterM2;
  private boolean cutEnds;

  WoodPainter(View view, TreeState state, double clusterM2) {
    this.clusterM2 = clusterM2;
    this.view = view;
    this.state = state;
  }

  /** Whether a limb is drawn as deadwood. */
  boolean dead(int limb) {
    byte status = state.limbs.status[limb];
    boolean bareStub = status == LimbStatus.STUB.code() && state.sprouts.count[limb] <= 0;
    return !state.vitality.alive || status == LimbStatus.DEAD.code() || bareStub;
  }

  /** Paints the limbs of one layer: all twigs first, then all limbs, then the cut ends. */
  void paint(List<LimbLine> lines, Clumps[] clumps, int layer, List<Shape> onto) {
    Outline twigs = new Outline();
    Outline bodies = new Outline();
    Outline bareTwigs = new Outline();
    Outline bareBodies = new Outline();
    List<Shape> faces = new ArrayList<>();
    for (LimbLine line : lines) {
      boolean dead = dead(line.limb);
      if (state.limbs.status[line.limb] != LimbStatus.STUB.code()) {
        sideBranches(line, clumps[line.limb], dead, dead ? bareTwigs : twigs);
      }
      body(line, dead ? bareBodies : bodies);
      if (cutAcross(line)) {
        cutFace(line, faces);
      }
    }
    String colour = layer < 2 ? Palette.BARK_LIGHT : Palette.BARK;
    add(twigs, Style.line(colour, TWIG), onto);
    add(bodies, Style.fill(colour), onto);
    add(bareTwigs, Style.line(Palette.DEADWOOD_EDGE, TWIG), onto);
    add(bareBodies, Style.fill(Palette.DEADWOOD).edged(Palette.DEADWOOD_EDGE, 0.7), onto);
    onto.addAll(faces);
  }

  private static void add(Outline outline, Style style, List<Shape> onto) {
    if (!outline.isEmpty()) {
      onto.add(new Shape.Path(outline, style));
    }
  }

  /** Whether any cut end has been painted. */
  boolean showsCutEnds() {
    return cutEnds;
  }

  private boolean cutAcross(LimbLine line) {
    boolean headed = state.limbs.tip[line.limb] == TipState.HEADED.code();
    boolean stub = state.limbs.status[line.limb] == LimbStatus.STUB.code();
    return stub || (headed && line.endShare > BLUNT_CUT);
  }

  private void cutFace(LimbLine line, List<Shape> onto) {
    cutEnds = true;
    double radius = Math.max(1.6, view.scale() * line.radiusM(1));
    Spot tip = line.tip();
    Style face = Style.fill(Palette.OPEN_WOUND).edged(Palette.WOUND_EDGE, 0.8);
    double x = view.x(tip.eastM());
    onto.add(new Shape.Ellipse(x, view.y(tip.heightM()), radius, 0.75 * radius, face));
  }

  /** A tapering body: up one side and down the other, smooth through the middles of its corners. */
  private void body(LimbLine line, Outline body) {
    int n = LimbLine.NODES;
    double[] x = new double[2 * n];
    double[] y = new double[2 * n];
    for (int node = 0; node < n; node++) {
      Spot before = line.node(Math.max(0, node - 1));
      Spot after = line.node(Math.min(n - 1, node + 1));
      double dx = view.x(after.eastM()) - view.x(before.eastM());
      double dy = view.y(after.heightM()) - view.y(before.heightM());
      double length = Math.max(1e-6, Math.sqrt(dx * dx + dy * dy));
      double half = Math.max(THINNEST, view.scale() * line.radiusM(node / (n - 1.0)));
      double cx = view.x(line.node(node).eastM());
      double cy = view.y(line.node(node).heightM());
      x[node] = cx - half * dy / length;
      y[node] = cy + half * dx / length;
      x[2 * n - 1 - node] = cx + half * dy / length;
      y[2 * n - 1 - node] = cy - half * dx / length;
    }
    body.move(x[0], y[0]);
    smooth(body, x, y, 1, n - 1);
    body.line(x[n], y[n]);
    smooth(body, x, y, n + 1, 2 * n - 1);
    body.close();
  }

  private static void smooth(Outline body, double[] x, double[] y, int from, int to) {
    for (int i = from; i < to; i++) {
      boolean last = i == to - 1;
      double endX = last ? x[to] : (x[i] + x[i + 1]) / 2;
      double endY = last ? y[to] : (y[i] + y[i + 1]) / 2;
      body.quad(x[i], y[i], endX, endY);
    }
  }

  private void sideBranches(LimbLine line, Clumps clumps, boolean dead, Outline twigs) {
    for (int zone = 0; zone < Limbs.ZONES; zone++) {
      int twigCount = dead ? BARE_TWIGS : twigsSeen(line.limb * Limbs.ZONES + zone);
      for (int clump = 0; clump < twigCount; clump++) {
        Spot end = dead ? clumps.bareEnd(zone, clump) : clumps.middle(zone, clump);
        twig(twigs, line, clumps.along(zone, clump), end);
      }
    }
  }

  /** Side branches of a zone that foliage doesn't hide. */
  private int twigsSeen(int zone) {
    double full = state.limbs.fullLeafAreaM2[zone];
    double leaf = state.limbs.leafAreaM2[zone];
    boolean hidden = full > 0 && leaf / full > HIDING && leaf > FEW_MARKS * clusterM2;
    boolean outer = zone % Limbs.ZONES == Limbs.OUTER;
    int seen = !hidden ? Clumps.PER_ZONE : outer ? 2 : 1;
    return Math.min(seen, Clumps.left(state.limbs.budFullness[zone]));
  }

  private void twig(Outline twigs, LimbLine line, double along, Spot to) {
    Spot from = line.at(Math.min(0.97, Math.max(0.02, along - 0.16)));
    Spot bend = line.at(Math.min(1, along - 0.02));
    double x = view.x(to.eastM());
    double y = view.y(to.heightM());
    double fromX = view.x(from.eastM());
    double fromY = view.y(from.heightM());
    twigs.move(fromX, fromY);
    if (Math.abs(x - fromX) + Math.abs(y - fromY) < TOO_SHORT_TO_BEND) {
      twigs.line(x, y);
    } else {
      twigs.quad((view.x(bend.eastM()) + x) / 2, (view.y(bend.heightM()) + y) / 2, x, y);
    }
  }
}
