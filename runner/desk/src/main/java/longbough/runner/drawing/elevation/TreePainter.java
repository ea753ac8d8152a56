package longbough.runner.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.StateWords;
import longbough.runner.drawing.scene.Shape;

/** One whole tree: far foliage and limbs first, then the trunk, then what stands in front. */
final class TreePainter {
  private final TreeState state;
  private final View view;
  private final TrunkAxis axis;
  private final CrownBox crown;
  private final WoodPainter wood;
  private final TrunkPainter trunk;
  private final FoliagePainter foliage;
  private final SproutPainter sprouts;
  private final WoundPainter wounds;
  private final LimbLine[] lines = new LimbLine[Limbs.MAX];
  private final Clumps[] clumps = new Clumps[Limbs.MAX];

  TreePainter(TreeState state, View view, SpeciesLook look, FoliageMarks marks, double clusterM2) {
    this.state = state;
    this.view = view;
    axis = new TrunkAxis(state, look);
    crown = CrownBox.of(state);
    wood = new WoodPainter(view, state, clusterM2);
    trunk = new TrunkPainter(view, state, axis);
    foliage = new FoliagePainter(view, marks, clusterM2, crown);
    sprouts = new SproutPainter(view, state, clusterM2 / 4, marks.sproutLeaf(), crown.radiusM());
    wounds = new WoundPainter(view, state, axis, trunk);
    for (int limb = 0; limb < state.limbs.count; limb++) {
      if (state.limbs.status[limb] != LimbStatus.EMPTY.code()) {
        lines[limb] = new LimbLine(state, limb, look, axis);
        clumps[limb] = new Clumps(lines[limb], state.limbs.crownShareM[limb], look);
      }
    }
  }

  List<Shape> paint() {
    growLeavesAndSprouts();
    List<Shape> onto = new ArrayList<>();
    for (int layer = 0; layer < View.LAYERS; layer++) {
      if (layer == View.LAYERS / 2) {
        trunk.paint(onto);
      }
      limbs(layer, onto);
      if (layer == View.LAYERS / 2) {
        wounds.paint(lines, onto);
      }
      foliage.paint(layer, onto);
      sprouts.paint(layer, onto);
    }
    return onto;
  }

  /** Notes what a legend must name. */
  void note(Shown shown) {
    shown.openWounds |= wounds.shows(true) || trunk.cut() || wood.showsCutEnds();
    shown.closedWounds |= wounds.shows(false);
    shown.sprouts |= sprouts.shows();
    shown.fallen |= StateWords.fallen(state);
  }

  private void growLeavesAndSprouts() {
    for (LimbLine line : lines) {
      if (line != null) {
        sprouts.onLimb(line);
        if (!wood.dead(line.limb)) {
          foliage.add(state, line, clumps[line.limb]);
        }
      }
    }
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      sprouts.onTrunk(cohort, axis, trunk);
    }
  }

  private void limbs(int layer, List<Shape> onto) {
    List<LimbLine> here = new ArrayList<>();
    for (LimbLine line : lines) {
      if (line != null && View.layer(0.5 * line.tip().towardsM(), crown.radiusM()) == layer) {
        here.add(line);
      }
    }
    wood.paint(here, clumps, layer, onto);
  }
}
