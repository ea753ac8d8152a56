package longbough.model.process;

import longbough.model.geometry.Allometry;
import longbough.model.geometry.CrownShape;
import longbough.model.numeric.Fast;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.CrownFrame;
import longbough.model.state.TreeState;

/**
 * Shade of the neighbours: it deepens from their tops downwards.
 *
 * <pre>
 * T = o + (1 - o) exp(-N B(x) / sin(e)),   x = min(1, max(0, 1 - z / H) / c)
 * N = min(Nm, k O (1 + w) q La(d) / (pi R^2)),   H = Ha(dl) hf,   z' = z + g tan(e)
 * g = sqrt(R^2 - (y r)^2) - r sqrt(1 - y^2)
 * </pre>
 *
 * T share of light of elevation e that reaches the crown where it comes in at height z (m); o
 * openness, the share of the horizon without neighbours (1). The neighbours are trees like this one
 * were it uncut, so that cutting it doesn't change them: H their height (m), allometric height Ha
 * at the diameter dl that goes with the leader times the measured height factor hf; c share of
 * their height that carries leaf; B share of a crown of the species' outline that lies above the
 * share x of its length from the top, since tips of cones let more light between them than round
 * heads; N optical depth of the stand, straight down (1), by the leaf area La of the species at the
 * diameter d that goes with the shoots (m2), what the tree had of it when it was measured, q, and
 * the reach R of its crown (m), at most Nm, that of closed stands; k, O and w as in {@link
 * LightField}. They begin at that reach: a beam that leaves a narrower cylinder of radius r at y r
 * beside the axis rises on over the gap g (m) before it meets them. Source: Monsi M., Saeki T.
 * 1953; Nm Vose et al. 1995; c and q Falster et al. 2015; that the belt is even all round is our
 * own simplification.
 */
final class Neighbours {
  private static final int STEPS = 32;

  private double openness;
  private double heightM;
  private double reachM;
  private double crownShare;
  private double depth;

  /** Share of the neighbours' leaf above each step down their crowns, and once more the last. */
  private final double[] above = new double[STEPS + 2];

  private SpeciesParameters outlined;

  /** Sets up the neighbours of a tree on a site with the given openness. */
  void stand(TreeState state, ModelParameters parameters, double opennessOfSite) {
    LightParameters p = parameters.light();
    openness = opennessOfSite;
    heightM =
        Allometry.heightM(parameters.species(), state.trunk.leaderStatureM())
            * state.frame.heightFactor;
    reachM = reachM(state, parameters.species());
    crownShare = p.neighbourCrownShare();
    outline(parameters.species());
    depth = Math.min(p.neighbourDepth(), ownDepth(state, parameters));
  }

  private void outline(SpeciesParameters species) {
    if (outlined == species) {
      return;
    }
    outlined = species;
    for (int i = 0; i <= STEPS; i++) {
      above[i] = CrownShape.volumeAbove(species, 1 - (double) i / STEPS);
    }
    above[STEPS + 1] = 1;
  }

  /** Reach of the crown were it uncut, mean over the compass, m. */
  static double reachM(TreeState state, SpeciesParameters species) {
    double factor = 0;
    for (double spread : state.frame.spreadFactor) {
      factor += spread / CrownFrame.SECTORS;
    }
    return factor * Allometry.crownDiameterM(species, state.trunk.statureM()) / 2;
  }

  /** Optical depth, straight down, of a stand of trees like this one were it uncut. */
  private double ownDepth(TreeState state, ModelParameters parameters) {
    double leaf =
        state.frame.leafOverOpen
            * Allometry.leafAreaM2(parameters.species(), state.trunk.statureM());
    double depthOfLeaf = parameters.light().depthOfLeaf(parameters.species());
    return depthOfLeaf * leaf / (Math.PI * reachM * reachM);
  }

  /**
   * How far the light of a beam travels level between the neighbours and a cylinder round the
   * crown, m: longer beside the axis than through it.
   *
   * @param radiusM radius of the cylinder, m
   * @param aside how far from the axis the beam passes, over that radius
   */
  double gapM(double radiusM, double aside) {
    if (openness == 1 || radiusM >= reachM) {
      return 0;
    }
    double beside = aside * radiusM;
    return Math.sqrt(reachM * reachM - beside * beside) - radiusM * Math.sqrt(1 - aside * aside);
  }

  /**
   * Share of light that the neighbours let through to a height at some distance from them.
   *
   * @param atM height, m
   * @param gapM level distance to the neighbours, m
   * @param sine sine of the light's elevation
   */
  double passed(double atM, double gapM, double sine) {
    if (openness == 1 || atM >= heightM) {
      return 1;
    }
    double rise = gapM * sine / Math.sqrt(1 - sine * sine);
    double below = Math.min(1, Math.max(0, 1 - (atM + rise) / heightM) / crownShare) * STEPS;
    int from = (int) below;
    double passed = above[from] + (below - from) * (above[from + 1] - above[from]);
    return openness + (1 - openness) * Fast.exp(-depth * passed / sine);
  }
}
