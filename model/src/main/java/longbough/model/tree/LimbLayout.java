package longbough.model.tree;

import longbough.model.geometry.Allometry;
import longbough.model.geometry.CrownShape;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.CrownFrame;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/**
 * First-order limbs of a crown of which only the outline is known: evenly spaced from the crown
 * base upwards, each at the golden angle from the last (phyllotaxis), reaching to the outline. In
 * each of the four directions the limb nearest the widest height points there and has the measured
 * reach.
 */
final class LimbLayout {
  static final double GOLDEN_ANGLE = Math.PI * (3 - 2.23606797749979);
  private static final double MATURE_LIMBS = 50;

  private LimbLayout() {}

  static void reconstruct(TreeState state, MeasuredTree tree, ModelParameters p) {
    SpeciesParameters s = p.species();
    double length = tree.heightM() - tree.crownBaseM();
    double wanted =
        p.allocation().limbsDecurrent()
            + s.apicalControl()
                * (p.allocation().limbsExcurrent() - p.allocation().limbsDecurrent());
    int count = (int) Math.round(wanted);
    double spacing = length / count;
    state.frame.limbSpacingM =
        Math.max(spacing, s.heightMaxM() * s.crownRatioOpen() / MATURE_LIMBS);
    Limbs limbs = state.limbs;
    limbs.count = count;
    for (int limb = 0; limb < count; limb++) {
      double height = tree.crownBaseM() + limb * spacing;
      limbs.status[limb] = LimbStatus.ALIVE.code();
      limbs.heightM[limb] = height;
      limbs.azimuthRad[limb] = limb * GOLDEN_ANGLE % (2 * Math.PI);
      limbs.crownShareM[limb] = spacing;
      limbs.birthYear[limb] =
          -1
              - (int)
                  Math.round(
                      share(tree, height) * tree.dbhM() / 2 / tree.ringHabitM(p.allocation()));
    }
    int[] cardinal = cardinals(state, s, tree);
    double radius = Allometry.crownDiameterM(s, tree.dbhM()) / 2;
    for (int limb = 0; limb < count; limb++) {
      double most = radius * state.frame.spreadFactorAt(limbs.azimuthRad[limb]);
      double angle = angleRad(state, s, limb);
      double height = limbs.heightM[limb];
      reach(
          state,
          s,
          limb,
          CrownShape.tipReachM(s, tree.crownBaseM(), tree.heightM(), height, most, angle));
    }
    for (int sector = 0; sector < CrownFrame.SECTORS; sector++) {
      if (cardinal[sector] >= 0) {
        reach(state, s, cardinal[sector], tree.spreadM()[sector] / 2);
      }
    }
  }

  /** Share of the tree's life since it was so tall, if it grew evenly in height. */
  private static double share(MeasuredTree tree, double heightM) {
    return (tree.heightM() - heightM) / Math.max(0.1, tree.heightM());
  }

  /** Points one limb exactly to each of the four directions; returns their indices. */
  private static int[] cardinals(TreeState state, SpeciesParameters s, MeasuredTree tree) {
    Limbs limbs = state.limbs;
    double wide =
        state.frame.crownBaseM
            + s.crownWidestFraction() * (state.trunk.heightM - state.frame.crownBaseM);
    int[] chosen = new int[CrownFrame.SECTORS];
    for (int sector = 0; sector < CrownFrame.SECTORS; sector++) {
      double bearing = sector * 2 * Math.PI / CrownFrame.SECTORS;
      chosen[sector] = -1;
      double best = Double.MAX_VALUE;
      for (int limb = 0; limb < limbs.count; limb++) {
        double turn = Math.abs(limbs.azimuthRad[limb] - bearing);
        double apart = Math.min(turn, 2 * Math.PI - turn);
        double rise = tree.spreadM()[sector] / 2 / StrictMath.tan(angleRad(state, s, limb));
        double away = Math.abs(limbs.heightM[limb] + CrownShape.FOLIAGE_MIDDLE * rise - wide);
        if (apart <= Math.PI / CrownFrame.SECTORS && away < best) {
          best = away;
          chosen[sector] = limb;
        }
      }
      if (chosen[sector] >= 0) {
        limbs.azimuthRad[chosen[sector]] = bearing;
      }
    }
    return chosen;
  }

  private static double angleRad(TreeState state, SpeciesParameters s, int limb) {
    double crown = state.trunk.heightM - state.frame.crownBaseM;
    double u = crown > 0 ? (state.limbs.heightM[limb] - state.frame.crownBaseM) / crown : 0;
    return CrownShape.insertionRad(s, u);
  }

  /**
   * Sets angle and length so that a limb reaches as far as wanted without passing the tree's top.
   */
  static void reach(TreeState state, SpeciesParameters s, int limb, double reachM) {
    Limbs limbs = state.limbs;
    double angle = angleRad(state, s, limb);
    double rise = reachM / StrictMath.tan(angle);
    double room = state.trunk.heightM - limbs.heightM[limb];
    rise = Math.max(0, Math.min(rise, room));
    limbs.insertionRad[limb] = StrictMath.atan2(reachM, rise);
    limbs.lengthM[limb] = Math.sqrt(reachM * reachM + rise * rise);
  }
}
