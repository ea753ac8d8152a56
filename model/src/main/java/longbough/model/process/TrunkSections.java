package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;

/**
 * Draws every wound's decay column into the trunk's cross-sections, where it lies: the union of
 * columns by station and sector.
 *
 * <p>A column is a spindle: at distance z of its reach L its extents are those at the wound times
 * √(1 - (z/L)²). In sapwood its section is half an ellipse, depth h √(1 - (δ/β)²) at the angle δ
 * from the wound's bearing, β = half width / barrier radius; in heartwood a disc that touches the
 * sapwood on the wound's side and grows with depth until it fills the heartwood; where the column
 * goes all round and to the pith, a centred disc. Once decay has left the core of a removed branch,
 * that core, a wedge as wide as the branch at the surface and pointed at the pith, is decayed as
 * well, as deep as the column reaches along the grain, since the branch's grain runs inwards.
 * Nothing lies outside the barrier radius: the radius at wounding, carried up the trunk by taper
 * and never widened below the wound. Lengths m, angles rad. Where columns of several wounds meet
 * they are one; wood between them that none has reached is sound. A column held in the core of a
 * removed branch is no trunk decay and is left out. Shape after Shigo (1983); the spindle is our
 * assumption.
 */
public final class TrunkSections implements Process {
  private static final int YOUNG_YEARS = 8;
  private static final int TURNS = 3;
  private static final double WHOLE_DEPTH = 1 - 1e-9;
  private static final double ALL_ROUND = Math.PI * (1 - 1e-9);

  @Override
  public String name() {
    return "trunk sections";
  }

  @Override
  public List<String> sources() {
    return List.of("shigo1983", "shigo1969");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.SECTIONS);
  }

  @Override
  public void run(YearContext context) {
    if (!context.state.vitality.alive || context.state.trunk.stations == 0) {
      return;
    }
    clearAboveTrunk(context.state);
    Wounds wounds = context.state.wounds;
    for (int w = 0; w < wounds.count; w++) {
      if (wounds.limb[w] == Wounds.ON_TRUNK
          && due(context.state, w)
          && !BranchCore.confines(wounds, w)) {
        draw(context, w);
      }
    }
    for (int w = 0; w < wounds.count; w++) {
      if (wounds.limb[w] == Wounds.ON_TRUNK && wounds.open(w) && !wounds.acrossStem[w]) {
        openFace(context.state, w);
      }
    }
  }

  // Columns never shrink, so that what has been drawn stays right; old ones creep and are drawn
  // again
  // in turn, which saves most of the work.
  private static boolean due(TreeState state, int w) {
    boolean fast = state.wounds.acrossStem[w] || state.year - state.wounds.year[w] < YOUNG_YEARS;
    return fast || state.year <= 1 || (state.year + w) % TURNS == 0;
  }

  // Wood that grows above a topped trunk later is sound; faces that have closed are no longer open.
  private static void clearAboveTrunk(TreeState state) {
    Sections sections = state.sections;
    for (int s = 0; s < Trunk.MAX_STATIONS; s++) {
      if (sections.decayed[s]) {
        sections.close(s);
        if (s >= state.trunk.stations) {
          sections.clear(s);
        }
      }
    }
  }

  // Every column meets at least the station nearest to its wound; that of a cut through the trunk
  // lies below
  // it, whatever has grown above since.
  private static void draw(YearContext context, int w) {
    Trunk trunk = context.state.trunk;
    Wounds wounds = context.state.wounds;
    double step = Trunk.STATION_STEP_M;
    int top = trunk.stations - 1;
    int last = wounds.acrossStem[w] ? Math.min(top, (int) (wounds.heightM[w] / step)) : top;
    int from = Math.max(0, (int) ((wounds.heightM[w] - wounds.columnDownM[w]) / step + 0.5));
    int to = Math.min(last, (int) ((wounds.heightM[w] + wounds.columnUpM[w]) / step + 0.5));
    double radiusHere = trunk.radiusAtM(Math.min(wounds.heightM[w], last * step));
    double barrier = Math.min(wounds.parentRadiusM[w], radiusHere);
    for (int s = Math.min(from, last); s <= to; s++) {
      double bound = Math.min(barrier, trunk.radiusM[s] - (radiusHere - barrier));
      double away = s * step - wounds.heightM[w];
      double reach = away > 0 ? wounds.columnUpM[w] : wounds.columnDownM[w];
      double z = Math.max(0, Math.abs(away) - step / 2);
      double left = reach > 0 ? 1 - z * z / (reach * reach) : z == 0 ? 1 : 0;
      if (bound > 0 && left > 0) {
        section(context, w, s, bound, Math.sqrt(left));
      }
    }
  }

  private static void section(YearContext context, int w, int s, double bound, double taper) {
    Wounds wounds = context.state.wounds;
    Sections sections = context.state.sections;
    double scale = bound / wounds.parentRadiusM[w];
    double depth = Math.min(bound, wounds.columnDepthM[w] * scale) * taper;
    double beta = wounds.columnHalfWidthM[w] / wounds.parentRadiusM[w];
    if (!(depth > 0)) {
      return;
    }
    boolean whole =
        beta >= ALL_ROUND && wounds.columnDepthM[w] >= WHOLE_DEPTH * wounds.parentRadiusM[w];
    if (wounds.acrossStem[w] || whole) {
      ColumnShapes.centredDisc(sections, s, depth);
    }
    if (wounds.acrossStem[w]) {
      return;
    }
    double azimuth = wounds.azimuthRad[w];
    ColumnShapes.halfEllipse(sections, s, azimuth, bound, depth, Math.min(Math.PI, beta * taper));
    double sapwood = bound * (1 - Math.sqrt(Math.max(0, 1 - context.state.trunk.sapwoodShare)));
    branchCore(context.state, w, s, bound);
    double heart = Math.max(bound - sapwood, Math.min(bound, beta * bound / Math.PI));
    if (depth > sapwood && heart > 0) {
      double fill = (depth - sapwood) / (bound - sapwood);
      ColumnShapes.eccentricDisc(sections, s, azimuth, heart, fill);
    }
  }

  // Along the branch's own grain decay runs as far as along the trunk's: towards the pith.
  private static void branchCore(TreeState state, int w, int s, double bound) {
    Wounds wounds = state.wounds;
    double branch = wounds.cutDiameterM[w] / 2;
    double away = Math.abs(s * Trunk.STATION_STEP_M - wounds.heightM[w]);
    if (!(branch > 0) || away > Math.max(branch, Trunk.STATION_STEP_M / 2)) {
      return;
    }
    double depth = Math.min(bound, wounds.columnDownM[w]);
    double beta = Math.min(Math.PI / 2, branch / wounds.parentRadiusM[w]);
    ColumnShapes.wedge(state.sections, s, wounds.azimuthRad[w], bound, depth, beta);
  }

  // Beside an open face no wood stands outside the barrier zone.
  private static void openFace(TreeState state, int w) {
    Wounds wounds = state.wounds;
    double step = Trunk.STATION_STEP_M;
    int last = state.trunk.stations - 1;
    double half = wounds.openHeightM[w] / 2;
    int from = Math.max(0, (int) ((wounds.heightM[w] - half) / step + 0.5));
    int to = Math.min(last, (int) ((wounds.heightM[w] + half) / step + 0.5));
    for (int s = Math.min(from, last); s <= to; s++) {
      if (state.sections.decayed[s]) {
        double radius = state.trunk.radiusM[s];
        double halfAngle = Math.min(Math.PI, wounds.openWidthM[w] / 2 / radius);
        double bound = Math.min(radius, wounds.parentRadiusM[w]);
        ColumnShapes.open(state.sections, s, wounds.azimuthRad[w], bound, halfAngle);
      }
    }
  }
}
