package longbough.runner.drawing.elevation;

import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.Scatter;
import longbough.runner.drawing.look.SpeciesLook;

/**
 * The course of one limb in space: it starts and ends where the state says and bends between, as
 * its kind does.
 */
final class LimbLine {
  static final int NODES = 5;

  /** A limb this many times as long as thick tapers to nothing; a shorter one was cut. */
  private static final double NATURAL_SLENDERNESS = 42;

  private static final double THINNEST_END = 0.08;

  private final Spot[] nodes = new Spot[NODES];
  final int limb;
  final double lengthM;
  final double baseRadiusM;

  /** Radius at the end over radius at the base. */
  final double endShare;

  private final double flatness;
  private final double sideEast;
  private final double sideTowards;
  private final double outEast;
  private final double outTowards;

  LimbLine(TreeState state, int limb, SpeciesLook look, TrunkAxis axis) {
    Limbs limbs = state.limbs;
    this.limb = limb;
    lengthM = Math.max(0.05, limbs.lengthM[limb]);
    baseRadiusM = Math.max(0, limbs.baseDiameterM[limb] / 2);
    double natural = NATURAL_SLENDERNESS * 2 * baseRadiusM;
    endShare = natural > 0 ? clamp(1 - lengthM / natural, THINNEST_END, 0.9) : THINNEST_END;
    outEast = StrictMath.sin(limbs.azimuthRad[limb]);
    outTowards = -StrictMath.cos(limbs.azimuthRad[limb]);
    sideEast = -outTowards;
    sideTowards = outEast;
    flatness = Math.abs(StrictMath.sin(limbs.insertionRad[limb]));
    double reachM = lengthM * StrictMath.sin(limbs.insertionRad[limb]);
    double riseM = lengthM * StrictMath.cos(limbs.insertionRad[limb]);
    double height = limbs.heightM[limb];
    double foot = axis.eastM(height);
    for (int node = 0; node < NODES; node++) {
      double t = node / (double) (NODES - 1);
      double sway = node == 0 ? 0 : crook(look) * Scatter.around(limb, node, 3) * (1 - 0.5 * t);
      double lift = bow(look, t) + (node == 0 ? 0 : crook(look) * Scatter.around(limb, node, 4));
      nodes[node] =
          new Spot(
              foot + reachM * t * outEast + sway * sideEast,
              height + riseM * t + lift,
              reachM * t * outTowards + sway * sideTowards);
    }
  }

  private double crook(SpeciesLook look) {
    return lengthM * (look.conifer() ? 0.008 : 0.028);
  }

  private double bow(SpeciesLook look, double t) {
    double arch = StrictMath.sin(Math.PI * t);
    return lengthM * (look.conifer() ? -0.07 * arch : 0.09 * arch);
  }

  /** The place at a share of the length, 0 at the trunk to 1 at the end and a little beyond. */
  Spot at(double t) {
    double position = clamp(t, 0, 1) * (NODES - 1);
    int below = Math.min(NODES - 2, (int) position);
    double share = position - below + Math.max(0, t - 1) * (NODES - 1);
    Spot a = nodes[below];
    Spot b = nodes[below + 1];
    return a.plus(
        share * (b.eastM() - a.eastM()),
        share * (b.heightM() - a.heightM()),
        share * (b.towardsM() - a.towardsM()));
  }

  /** A place beside the limb: so far to its side and above it, m. */
  Spot beside(double t, double sideM, double aboveM) {
    return at(t).plus(sideM * sideEast, aboveM, sideM * sideTowards);
  }

  double radiusM(double t) {
    return baseRadiusM * (1 - (1 - endShare) * clamp(t, 0, 1));
  }

  /** 0 for an upright limb to 1 for a level one. */
  double flatness() {
    return flatness;
  }

  Spot node(int index) {
    return nodes[index];
  }

  Spot tip() {
    return nodes[NODES - 1];
  }

  private static double clamp(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }
}
