package longbough.model.tree;

import longbough.model.parameter.ModelParameters;
import longbough.model.pruning.Placement;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;

/**
 * Turns cavities and wounds from before the first year into wound records. A closed column inside a
 * sound wall t is decay of the wood that stood when the tree had radius R - t: the barrier zone
 * stands there and the column fills it. An open cavity reaches the surface at its bearing.
 */
final class OldDamage {
  private static final int UNKNOWN_AGE_YEARS = 20;

  private OldDamage() {}

  static void apply(TreeState state, MeasuredTree tree, ModelParameters p) {
    for (MeasuredTree.KnownCavity cavity : tree.cavities()) {
      cavity(state, cavity);
    }
    for (MeasuredTree.OldWound wound : tree.oldWounds()) {
      oldWound(state, wound);
    }
  }

  private static void cavity(TreeState state, MeasuredTree.KnownCavity cavity) {
    Wounds wounds = state.wounds;
    double radius = state.trunk.radiusAtM(cavity.heightM());
    int w = wounds.add();
    double bound = Math.max(0, radius - cavity.soundWallM());
    wounds.year[w] = -UNKNOWN_AGE_YEARS;
    wounds.month[w] = 1;
    wounds.placement[w] = (byte) Placement.FLUSH.ordinal();
    wounds.heightM[w] = cavity.heightM();
    wounds.azimuthRad[w] =
        Math.toRadians(Double.isNaN(cavity.bearingDeg()) ? 0 : cavity.bearingDeg());
    wounds.cutDiameterM[w] = Math.max(cavity.openWidthM(), bound);
    wounds.faceWidthM[w] = cavity.openWidthM();
    wounds.faceHeightM[w] = cavity.openWidthM() > 0 ? cavity.lengthM() : 0;
    wounds.openWidthM[w] = wounds.faceWidthM[w];
    wounds.openHeightM[w] = wounds.faceHeightM[w];
    wounds.parentRadiusM[w] = cavity.openWidthM() > 0 ? radius : bound;
    wounds.heartwood[w] = true;
    wounds.columnUpM[w] = cavity.lengthM() / 2;
    wounds.columnDownM[w] = cavity.lengthM() / 2;
    wounds.columnDepthM[w] = wounds.parentRadiusM[w];
    wounds.columnHalfWidthM[w] = cavity.openWidthM() > 0 ? bound : Math.PI * bound;
    wounds.closedYear[w] = cavity.openWidthM() > 0 ? Integer.MAX_VALUE : -1;
  }

  private static void oldWound(TreeState state, MeasuredTree.OldWound wound) {
    Wounds wounds = state.wounds;
    int w = wounds.add();
    double age = Double.isNaN(wound.ageYears()) ? UNKNOWN_AGE_YEARS / 2.0 : wound.ageYears();
    double radius = state.trunk.radiusAtM(wound.heightM());
    double open = Double.isNaN(wound.openWidthM()) ? 0 : wound.openWidthM();
    wounds.year[w] = -(int) Math.round(age);
    wounds.month[w] = 1;
    wounds.placement[w] = (byte) Placement.COLLAR.ordinal();
    wounds.heightM[w] = wound.heightM();
    wounds.azimuthRad[w] =
        Math.toRadians(Double.isNaN(wound.bearingDeg()) ? 0 : wound.bearingDeg());
    wounds.cutDiameterM[w] = wound.cutDiameterM();
    wounds.faceWidthM[w] = wound.cutDiameterM();
    wounds.faceHeightM[w] = wound.cutDiameterM();
    wounds.openWidthM[w] = open;
    wounds.openHeightM[w] = open;
    wounds.parentRadiusM[w] =
        Math.max(wound.cutDiameterM() / 2, radius - age * state.trunk.ringMemoryM);
    wounds.closedYear[w] = open > 0 ? Integer.MAX_VALUE : -1;
  }
}
