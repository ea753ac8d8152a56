package longbough.runner.drawing.look;

import longbough.shared.trait.LeafType;
import longbough.shared.trait.SpeciesTraits;

/**
 * What a drawing needs to know about the species.
 *
 * @param name as written in titles
 * @param foliage mark that stands for leaves
 * @param conifer whether side branches lie in flat tiers
 * @param apicalControl 0 (the leader is soon lost among its limbs) to 1 (one straight leader)
 */
public record SpeciesLook(String name, FoliageLook foliage, boolean conifer, double apicalControl) {

  public static SpeciesLook of(SpeciesTraits traits) {
    return new SpeciesLook(
        traits.commonName(), foliageOf(traits), traits.conifer(), traits.value("apical_control"));
  }

  private static FoliageLook foliageOf(SpeciesTraits traits) {
    if (traits.leafType() == LeafType.SCALE) {
      return FoliageLook.FANS;
    }
    if (traits.leafType() == LeafType.NEEDLE) {
      boolean pine = traits.scientificName().startsWith("Pinus");
      return pine ? FoliageLook.TUFTS : FoliageLook.SPRAYS;
    }
    return FoliageLook.LEAVES;
  }
}
