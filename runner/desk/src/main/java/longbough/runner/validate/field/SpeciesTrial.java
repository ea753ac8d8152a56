package longbough.runner.validate.field;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import longbough.shared.trait.SpeciesTraits;

/**
 * The model beside the measured trees of one species.
 *
 * @param species who
 * @param cities where the trees were measured
 * @param trees how many they are
 * @param grown the trees that the model grew
 * @param relations the relations of which enough is known
 * @param hidden leaf area found again from the other sizes
 */
public record SpeciesTrial(
    SpeciesTraits species,
    List<String> cities,
    int trees,
    Grown grown,
    List<RelationTrial> relations,
    HiddenLeaf hidden) {

  static SpeciesTrial of(SpeciesTraits species, List<StreetTree> measured) {
    Grown grown = Grown.of(species.id(), StreetTrees.climate(measured));
    return new SpeciesTrial(
        species,
        StreetTrees.cities(measured),
        measured.size(),
        grown,
        Stream.of(Relation.values())
            .map(relation -> RelationTrial.of(relation, measured, grown.points()))
            .filter(Objects::nonNull)
            .toList(),
        HiddenLeaf.of(species.id(), measured));
  }

  public Optional<RelationTrial> relation(Relation wanted) {
    return relations.stream().filter(trial -> trial.relation() == wanted).findFirst();
  }
}
