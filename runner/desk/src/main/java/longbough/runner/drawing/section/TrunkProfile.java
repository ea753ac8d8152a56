package longbough.runner.drawing.section;

import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;
import longbough.runner.drawing.scene.Outline;

/** Turns heights and radii of one trunk into outlines; widths are drawn larger than heights. */
final class TrunkProfile {
  private static final double STEP_M = 0.25;
  private static final int COLUMN_STEPS = 14;

  private final TreeState state;
  private final double axisX;
  private final double groundY;
  private final double unitsUp;
  private final double unitsAcross;
  private final double bottomM;
  private final double topM;

  TrunkProfile(TreeState state, double axisX, double groundY, double unitsUp, double unitsAcross) {
    this(state, axisX, groundY, unitsUp, unitsAcross, 0, state.trunk.heightM);
  }

  private TrunkProfile(
      TreeState state,
      double axisX,
      double groundY,
      double unitsUp,
      double unitsAcross,
      double bottomM,
      double topM) {
    this.state = state;
    this.axisX = axisX;
    this.groundY = groundY;
    this.unitsUp = unitsUp;
    this.unitsAcross = unitsAcross;
    this.bottomM = bottomM;
    this.topM = topM;
  }

  /** The same trunk, of which only a piece is drawn. */
  TrunkProfile between(double lowM, double highM) {
    return new TrunkProfile(state, axisX, groundY, unitsUp, unitsAcross, lowM, highM);
  }

  /** Whether a height lies in the piece that is drawn. */
  boolean shows(double heightM) {
    return heightM >= bottomM && heightM <= topM + 0.01;
  }

  /** Whether any of a wound's column lies in the piece that is drawn. */
  boolean showsColumn(int wound) {
    return highM(wound) > lowM(wound);
  }

  double unitsUp() {
    return unitsUp;
  }

  double x(double radiusM) {
    return axisX + unitsAcross * radiusM;
  }

  double y(double heightM) {
    return groundY - unitsUp * heightM;
  }

  /** Radius of the standing trunk at a height, m; runs out to nothing above the last station. */
  double radiusM(double heightM) {
    Trunk trunk = state.trunk;
    if (trunk.stations == 0) {
      return 0;
    }
    double last = (trunk.stations - 1) * Trunk.STATION_STEP_M;
    double radius = trunk.radiusAtM(Math.min(heightM, last));
    if (trunk.leaderIntact && heightM > last && trunk.heightM > last) {
      radius *= Math.max(0, (trunk.heightM - heightM) / (trunk.heightM - last));
    }
    return radius;
  }

  /** The trunk, or its core where share is below 1. */
  Outline body(double share) {
    double top = Math.max(bottomM + 0.1, topM);
    int steps = (int) Math.ceil((top - bottomM) / STEP_M);
    Outline body = new Outline().move(x(-share * radiusM(bottomM)), y(bottomM));
    for (int step = 1; step <= steps; step++) {
      double height = Math.min(top, bottomM + step * STEP_M);
      body.line(x(-share * radiusM(height)), y(height));
    }
    for (int step = steps; step >= 0; step--) {
      double height = Math.min(top, bottomM + step * STEP_M);
      body.line(x(share * radiusM(height)), y(height));
    }
    return body.close();
  }

  /** Side on which a wound is drawn: 1 right for the eastern half, -1 left for the western. */
  double side(int wound) {
    return StrictMath.sin(state.wounds.azimuthRad[wound]) >= 0 ? 1 : -1;
  }

  /**
   * Where the surface of the trunk stood at wounding, m: inside today's surface by the wood that
   * has grown since, and nowhere wider than at the wound.
   */
  double boundM(int wound, double heightM) {
    double surface = radiusM(state.wounds.heightM[wound]);
    double barrier = Math.min(state.wounds.parentRadiusM[wound], surface);
    return Math.max(0, Math.min(barrier, radiusM(heightM) - (surface - barrier)));
  }

  double lowM(int wound) {
    Wounds wounds = state.wounds;
    return Math.max(bottomM, wounds.heightM[wound] - wounds.columnDownM[wound]);
  }

  double highM(int wound) {
    Wounds wounds = state.wounds;
    return Math.min(topM, wounds.heightM[wound] + wounds.columnUpM[wound]);
  }

  /**
   * The decay column of one wound as the state's sections have it: from the barrier zone inwards;
   * past the sapwood as a disc that fills the heartwood; about the pith where it goes all round.
   */
  Outline column(int wound) {
    double side = side(wound);
    Outline column = new Outline();
    for (int step = 0; step <= COLUMN_STEPS; step++) {
      double height = heightAt(wound, step);
      double outer = centred(wound) ? depthM(wound, height) : boundM(wound, height);
      point(column, side * outer, height, step == 0);
    }
    for (int step = COLUMN_STEPS; step >= 0; step--) {
      double height = heightAt(wound, step);
      point(column, side * innerM(wound, height), height, false);
    }
    return column.close();
  }

  /** Whether the column lies about the pith instead of at one side. */
  boolean centred(int wound) {
    Wounds wounds = state.wounds;
    double allRound = Math.PI * wounds.parentRadiusM[wound] * (1 - 1e-9);
    return wounds.acrossStem[wound] || wounds.columnHalfWidthM[wound] >= allRound;
  }

  /** Inner edge of a column, m from the pith; negative beyond it. */
  private double innerM(int wound, double heightM) {
    double depth = depthM(wound, heightM);
    double bound = boundM(wound, heightM);
    if (centred(wound)) {
      return -depth;
    }
    double core = Math.sqrt(Math.max(0, Math.min(1, 1 - state.trunk.sapwoodShare)));
    double sapwood = bound * (1 - core);
    if (depth <= sapwood || bound <= sapwood) {
      return bound - depth;
    }
    double parent = Math.max(1e-6, state.wounds.parentRadiusM[wound]);
    double turn = Math.min(1, state.wounds.columnHalfWidthM[wound] / parent / Math.PI);
    double heart = Math.max(bound - sapwood, turn * bound);
    double fill = (depth - sapwood) / (bound - sapwood);
    return Math.min(bound - depth, heart - 2 * fill * heart);
  }

  private double depthM(int wound, double heightM) {
    double parent = Math.max(1e-6, state.wounds.parentRadiusM[wound]);
    double bound = boundM(wound, heightM);
    double depth = Math.min(bound, state.wounds.columnDepthM[wound] * bound / parent);
    return depth * shareAt(wound, heightM);
  }

  /**
   * The wood of a branch inside the trunk, from a depth below the surface of its year (m): as thick
   * as the branch at that surface, pointed at the pith.
   */
  Outline branch(int wound, double depthM) {
    double height = state.wounds.heightM[wound];
    double bound = boundM(wound, height);
    double half = state.wounds.cutDiameterM[wound] / 2;
    double inner = Math.max(0, bound - depthM);
    double tip = bound > 0 ? half * inner / bound : 0;
    double side = side(wound);
    Outline branch = new Outline().move(x(side * inner), y(height + tip));
    branch.line(x(side * bound), y(height + half)).line(x(side * bound), y(height - half));
    return branch.line(x(side * inner), y(height - tip)).close();
  }

  /** Length of a branch's wood inside the trunk, m. */
  double branchM(int wound) {
    return boundM(wound, state.wounds.heightM[wound]);
  }

  /** The barrier zone of one wound: where the surface stood, as far as the column reaches. */
  Outline barrier(int wound) {
    double side = side(wound);
    Outline line = new Outline();
    for (int step = 0; step <= COLUMN_STEPS; step++) {
      double height = heightAt(wound, step);
      point(line, side * boundM(wound, height), height, step == 0);
    }
    return line;
  }

  private void point(Outline outline, double radiusM, double heightM, boolean first) {
    if (first) {
      outline.move(x(radiusM), y(heightM));
    } else {
      outline.line(x(radiusM), y(heightM));
    }
  }

  /** Heights closer together towards the ends, where the outline turns. */
  private double heightAt(int wound, int step) {
    double middle = (highM(wound) + lowM(wound)) / 2;
    double turn = Math.PI * (1 - step / (double) COLUMN_STEPS);
    return middle + (highM(wound) - lowM(wound)) / 2 * StrictMath.cos(turn);
  }

  /** A column is a spindle: its depth falls with the distance from the wound as an ellipse does. */
  private double shareAt(int wound, double heightM) {
    Wounds wounds = state.wounds;
    double away = heightM - wounds.heightM[wound];
    double reach = away > 0 ? wounds.columnUpM[wound] : wounds.columnDownM[wound];
    double share = reach <= 0 ? 0 : away / reach;
    return Math.sqrt(Math.max(0, 1 - share * share));
  }
}
