package longbough.model.parameter;

import longbough.shared.source.ParameterTable;

/**
 * Numbers of the light process; each with unit, range and source in {@code parameters/light.csv}.
 *
 * @param skyExponent p of the share of horizontal light that comes from below elevation e, sin(e)^p
 * @param beamSlope share of light that comes straight from the sun over the clearness of the sky, 1
 * @param clearSky radiation of a cloudless day over that above the air, 1
 * @param clumping share of the leaf area that acts as if spread at random
 * @param woodAreaShare optical depth of twigs behind leaves over that of leaves
 * @param bareWoodShare optical depth of a leafless crown over that of the same crown in leaf
 * @param neighbourDepth optical depth of a closed belt of neighbours, straight down
 * @param neighbourCrownShare share of the neighbours' height that carries leaf
 */
public record LightParameters(
    double skyExponent,
    double beamSlope,
    double clearSky,
    double clumping,
    double woodAreaShare,
    double bareWoodShare,
    double neighbourDepth,
    double neighbourCrownShare) {

  /** Optical depth of a square metre of leaf over each square metre, its twigs included, 1. */
  public double depthOfLeaf(SpeciesParameters species) {
    return species.extinctionCoefficient() * clumping * (1 + woodAreaShare);
  }

  /** Light that a leaf with nothing before it takes up, over that on open flat ground, 1. */
  public double unshaded(SpeciesParameters species) {
    return species.extinctionCoefficient() * skyExponent / (skyExponent - 1);
  }

  /** The same under another sky, with leaves and wood as wanted: for trying the light alone. */
  public LightParameters with(double sky, double clumped, double wood) {
    return new LightParameters(
        sky,
        beamSlope,
        clearSky,
        clumped,
        wood,
        bareWoodShare,
        neighbourDepth,
        neighbourCrownShare);
  }

  static LightParameters of(ParameterTable table) {
    return new LightParameters(
        table.value("light.sky_exponent"),
        table.value("light.beam_slope"),
        table.value("light.clear_sky"),
        table.value("light.clumping"),
        table.value("light.wood_area_share"),
        table.value("light.bare_wood_share"),
        table.value("light.neighbour_depth"),
        table.value("light.neighbour_crown_share"));
  }
}
