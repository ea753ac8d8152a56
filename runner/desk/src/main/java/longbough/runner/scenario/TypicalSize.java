package longbough.runner.scenario;

import longbough.model.geometry.Allometry;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * Sizes of a middling open-grown tree of a species by its trunk, to start from where something was
 * not measured: height and spread by {@link Allometry}, the crown base as in {@code defaults.csv}.
 *
 * @param heightM height, to the decimetre
 * @param crownBaseM height of the lowest living limb, to the decimetre
 * @param crownSpreadM diameter of the crown, to the decimetre
 */
public record TypicalSize(double heightM, double crownBaseM, double crownSpreadM) {
  private static final double CM_PER_M = 100;
  private static final double DECIMETRES = 10;

  /** The sizes that go with a trunk diameter. */
  public static TypicalSize of(SpeciesTraits species, double trunkDiameterCm) {
    SpeciesParameters s =
        ModelParameters.of(species, ParameterLibrary.general().with(species.numbers())).species();
    double height = Allometry.heightM(s, trunkDiameterCm / CM_PER_M);
    return new TypicalSize(
        rounded(height),
        rounded(Presets.fallback("tree.crown_base_share") * height),
        rounded(Allometry.crownDiameterM(s, trunkDiameterCm / CM_PER_M)));
  }

  private static double rounded(double metres) {
    return Math.rint(metres * DECIMETRES) / DECIMETRES;
  }
}
