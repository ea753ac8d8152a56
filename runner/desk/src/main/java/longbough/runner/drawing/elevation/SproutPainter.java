package longbough.runner.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.Scatter;
import longbough.runner.drawing.scene.Mark;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Upright shoots with light, outlined leaves; a cohort of many shoots is drawn as a few. */
final class SproutPainter {
  private static final int MOST_SHOOTS = 6;

  /** Short shoots are drawn fewer than long ones, since they would run into one another. */
  private static final double FEWEST_SHOOTS = 2;

  private static final double ROOM_OF_A_SHOOT = 10;

  /** Leaf pairs on one shoot stand at least so far apart, units. */
  private static final double LEAST_STEP = 7;

  private final View view;
  private final TreeState state;
  private final double leafPairM2;
  private final Mark leafPair;
  private final double crownRadiusM;
  private final List<Outline> stems = new ArrayList<>();
  private final List<List<int[]>> leaves = new ArrayList<>();

  SproutPainter(View view, TreeState state, double leafPairM2, Mark leafPair, double crownRadiusM) {
    this.view = view;
    this.state = state;
    this.leafPairM2 = leafPairM2;
    this.leafPair = leafPair;
    this.crownRadiusM = crownRadiusM;
    for (int layer = 0; layer < View.LAYERS; layer++) {
      stems.add(new Outline());
      leaves.add(new ArrayList<>());
    }
  }

  /** Shoots on a limb, about where the state says they sit. */
  void onLimb(LimbLine line) {
    int cohort = line.limb;
    double position = state.sprouts.position[cohort];
    int shoots = shoots(cohort);
    for (int shoot = 0; shoot < shoots; shoot++) {
      double t = position + 0.16 * Scatter.around(cohort, shoot, 51);
      double lean = 0.22 * Scatter.around(cohort, shoot, 52);
      shoot(line.at(Math.max(0.03, Math.min(1, t))), lean, cohort, shoot, shoots);
    }
  }

  /** Shoots out of the trunk: they start sideways and turn up. */
  void onTrunk(int cohort, TrunkAxis axis, TrunkPainter trunk) {
    int shoots = shoots(cohort);
    double bottom = (cohort - Limbs.MAX) * Sprouts.SECTION_M;
    for (int shoot = 0; shoot < shoots; shoot++) {
      double height = bottom + Sprouts.SECTION_M * Scatter.unit(cohort, shoot, 53);
      height = Math.max(0.2, Math.min(height, state.trunk.heightM));
      double hand = shoot % 2 == 0 ? 1 : -1;
      double east = axis.eastM(height) + hand * 0.8 * trunk.half(height) / view.scale();
      double lean = hand * (0.25 + 0.3 * Scatter.unit(cohort, shoot, 54));
      shoot(new Spot(east, height, 0.3), lean, cohort, shoot, shoots);
    }
  }

  private int shoots(int cohort) {
    double count = state.sprouts.count[cohort];
    if (!(count >= 0.5) || state.sprouts.lengthM[cohort] <= 0) {
      return 0;
    }
    double room = FEWEST_SHOOTS + view.scale() * state.sprouts.lengthM[cohort] / ROOM_OF_A_SHOOT;
    double most = Math.min(MOST_SHOOTS, room);
    return (int) Math.max(1, Math.min(most, Math.rint(2 * Math.sqrt(count) - 1)));
  }

  private void shoot(Spot foot, double lean, int cohort, int shoot, int shoots) {
    double length = state.sprouts.lengthM[cohort] * (0.7 + 0.45 * Scatter.unit(cohort, shoot, 55));
    double x = view.x(foot.eastM());
    double y = view.y(foot.heightM());
    double sideX = view.scale() * length * lean;
    double upY = view.scale() * length;
    int layer = View.layer(foot.towardsM(), crownRadiusM);
    stems.get(layer).move(x, y).quad(x + 0.75 * sideX, y - 0.4 * upY, x + sideX, y - upY);
    if (!state.vitality.alive) {
      return;
    }
    double area = state.sprouts.leafAreaM2[cohort] / shoots;
    int pairs = Math.max(1, Scatter.whole(area / leafPairM2, cohort, shoot));
    pairs = (int) Math.max(1, Math.min(pairs, upY / LEAST_STEP));
    for (int pair = 0; pair < pairs; pair++) {
      double t = 0.22 + 0.78 * (pair + 1.0) / pairs;
      double px = x + 1.5 * t * (1 - t) * sideX + t * t * sideX;
      double py = y - (0.8 * t * (1 - t) + t * t) * upY;
      leaves.get(layer).add(new int[] {Outline.tenths(px), Outline.tenths(py)});
    }
  }

  /** Whether the tree has any living shoot to draw. */
  boolean shows() {
    return state.vitality.alive && stems.stream().anyMatch(outline -> !outline.isEmpty());
  }

  /** The shoots whose feet stand in one layer. */
  void paint(int layer, List<Shape> onto) {
    if (stems.get(layer).isEmpty()) {
      return;
    }
    boolean alive = state.vitality.alive;
    String colour = alive ? Palette.SPROUT_STEM : Palette.DEADWOOD_EDGE;
    double width = alive ? 1.1 : 0.7;
    onto.add(new Shape.Path(stems.get(layer), Style.line(colour, width)));
    if (!leaves.get(layer).isEmpty()) {
      onto.add(new Shape.Stamps(leafPair, leaves.get(layer)));
    }
  }
}
