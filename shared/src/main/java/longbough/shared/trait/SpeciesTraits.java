package longbough.shared.trait;

import java.util.List;
import longbough.shared.source.ParameterTable;

/**
 * One species or genus of the library: who it is, which classes it belongs to, and its numbers.
 *
 * @param id file name and key in scenarios, e.g. {@code tilia-cordata}
 * @param scientificName e.g. {@code Tilia cordata}
 * @param commonNames English names, the usual one first
 * @param family e.g. {@code Malvaceae}
 * @param leafType shape of the foliage
 * @param leafHabit deciduous or evergreen
 * @param woodAnatomy ring porous, diffuse porous or conifer
 * @param compartmentClass how well it walls off decay
 * @param numbers every numeric trait, each named {@code species.…} with unit, range, basis, source
 * @param classSources one line a class above: basis and source of the classification
 */
public record SpeciesTraits(
    String id,
    String scientificName,
    List<String> commonNames,
    String family,
    LeafType leafType,
    LeafHabit leafHabit,
    WoodAnatomy woodAnatomy,
    CompartmentClass compartmentClass,
    ParameterTable numbers,
    List<String> classSources) {

  public double value(String name) {
    return numbers.value("species." + name);
  }

  public boolean evergreen() {
    return leafHabit == LeafHabit.EVERGREEN;
  }

  public boolean conifer() {
    return woodAnatomy == WoodAnatomy.CONIFER;
  }

  public String commonName() {
    return commonNames.isEmpty() ? scientificName : commonNames.get(0);
  }
}
