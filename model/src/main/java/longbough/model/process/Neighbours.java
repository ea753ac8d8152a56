package longbough.model.process;

import longbough.model.geometry.Allometry;
import longbough.model.numeric.Fast;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.CrownFrame;
import longbough.model.state.TreeState;

/**
 * Shade of the neighbours: it deepens from their tops downwards.
 *
 * <pre>
 * T = o + (1 - o) exp(-(N / c) max(0, min(c, 1 - z / H)) / sin(e)),   H = Ha(d) hf
 * </pre>
 *
 * T share of light of elevation e that reaches the crown where it comes in at height z (m) past the
 * outermost reach of the crown; o openness, the share of the horizon without neighbours (1); N
 * optical depth of a closed stand, straight down (1); c share of the neighbours' height that
 * carries leaf; H their height (m), which is that of this tree were it uncut: allometric height Ha
 * at its trunk diameter d times its measured height factor hf. They close up to the tree's own
 * crown. Cutting the tree therefore doesn't change them. Source: Monsi M., Saeki T. 1953; N Vose et
 * al. 1995; the even belt is our own simplification.
 */
final class Neighbours {
  private double openness;
  private double heightM;
  private double reachM;
  private double crownShare;
  private double depth;

  /** Sets up the neighbours of a tree on a site with the given openness. */
  void stand(TreeState state, ModelParameters parameters, double opennessOfSite) {
    LightParameters p = parameters.light();
    openness = opennessOfSite;
    heightM =
        Allometry.heightM(parameters.species(), state.trunk.statureM()) * state.frame.heightFactor;
    reachM = 0;
    for (double factor : state.frame.spreadFactor) {
      reachM += factor / CrownFrame.SECTORS;
    }
    reachM *= Allometry.crownDiameterM(parameters.species(), state.trunk.statureM()) / 2;
    crownShare = p.neighbourCrownShare();
    depth = p.neighbourDepth() / crownShare;
  }

  /**
   * Share of light that the neighbours let through to a height at some distance from the trunk.
   *
   * @param atM height, m
   * @param fromTrunkM distance from the trunk, m
   * @param sine sine of the light's elevation
   */
  double passed(double atM, double fromTrunkM, double sine) {
    if (openness == 1 || atM >= heightM) {
      return 1;
    }
    double rise = Math.max(0, reachM - fromTrunkM) * sine / Math.sqrt(1 - sine * sine);
    double below = Math.min(crownShare, Math.max(0, 1 - (atM + rise) / heightM));
    return openness + (1 - openness) * Fast.exp(-depth * below / sine);
  }
}
