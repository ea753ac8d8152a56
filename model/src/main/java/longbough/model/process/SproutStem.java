package longbough.model.process;

import longbough.model.state.Sprouts;

/**
 * Thickness of a shoot from its wood, as a slender stem of form factor f: d² = 4 wood / (π f ρ
 * length), ρ kg C m-3.
 */
final class SproutStem {
  private SproutStem() {}

  /** Base diameter of the mean sprout of a cohort, m. */
  static double diameterM(YearContext context, int cohort) {
    Sprouts sprouts = context.state.sprouts;
    double length = sprouts.lengthM[cohort] * sprouts.count[cohort];
    double carbonKgM3 =
        context.parameters.carbon().woodCarbon() * context.parameters.species().woodDensityKgM3();
    double form = context.parameters.strength().sproutStemForm();
    return length > 0
        ? Math.sqrt(4 / Math.PI * sprouts.woodKgC[cohort] / (form * carbonKgM3 * length))
        : 0;
  }
}
