package longbough.model.process;

import longbough.model.geometry.CrownShape;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/**
 * First-order limbs that the growing leader leaves behind, one for each spacing of new height, at
 * the golden angle from the last (phyllotaxis). A new limb starts without wood or leaves of its
 * own; both are built from the next year's budgets.
 */
final class NewLimbs {
  private static final double GOLDEN_ANGLE = Math.PI * (3 - 2.23606797749979);
  private static final double START_DIAMETER_M = 0.01;
  private static final double START_LENGTH_M = 0.3;

  private NewLimbs() {}

  static void add(YearContext context) {
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    double spacing = state.frame.limbSpacingM;
    int highest = highest(limbs);
    double from = highest >= 0 ? limbs.heightM[highest] : state.frame.crownBaseM;
    double azimuth = highest >= 0 ? limbs.azimuthRad[highest] : 0;
    while (from + 1.5 * spacing < state.trunk.heightM) {
      int limb = place(limbs);
      if (limb < 0) {
        return;
      }
      from += spacing;
      azimuth = (azimuth + GOLDEN_ANGLE) % (2 * Math.PI);
      start(context, limb, from, azimuth, spacing);
    }
  }

  private static void start(
      YearContext context, int limb, double heightM, double azimuthRad, double spacingM) {
    ModelParameters p = context.parameters;
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    double u =
        (heightM - state.frame.crownBaseM)
            / Math.max(1e-9, state.trunk.heightM - state.frame.crownBaseM);
    limbs.clear(limb);
    state.sprouts.clearShoots(limb);
    state.sprouts.budBank[limb] = p.species().budBankPerLimb();
    limbs.status[limb] = LimbStatus.ALIVE.code();
    limbs.heightM[limb] = heightM;
    limbs.azimuthRad[limb] = azimuthRad;
    limbs.insertionRad[limb] = CrownShape.insertionRad(p.species(), u);
    limbs.baseDiameterM[limb] = START_DIAMETER_M;
    limbs.lengthM[limb] = START_LENGTH_M;
    limbs.crownShareM[limb] = spacingM;
    limbs.birthYear[limb] = state.year;
    int topCell = (CrownLight.LAYERS - 1) * CrownLight.RINGS;
    for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
      limbs.budFullness[zone] = 1;
      context.light.zoneCell[zone] = topCell;
    }
  }

  private static int highest(Limbs limbs) {
    int highest = -1;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb) && (highest < 0 || limbs.heightM[limb] > limbs.heightM[highest])) {
        highest = limb;
      }
    }
    return highest;
  }

  private static int place(Limbs limbs) {
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.status[limb] == LimbStatus.EMPTY.code()) {
        return limb;
      }
    }
    return limbs.count < Limbs.MAX ? limbs.count++ : -1;
  }
}
