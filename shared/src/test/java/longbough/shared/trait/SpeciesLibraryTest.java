package longbough.shared.trait;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import longbough.shared.source.Basis;
import longbough.shared.source.Bibliography;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;

class SpeciesLibraryTest {

  private static final List<String> TRAITS =
      List.of(
          "height_ln_intercept",
          "height_ln_slope",
          "height_residual_sd",
          "height_max_m",
          "crown_diameter_ln_intercept",
          "crown_diameter_ln_slope",
          "crown_diameter_residual_sd",
          "crown_diameter_max_m",
          "leaf_area_ln_intercept",
          "leaf_area_ln_slope",
          "leaf_area_residual_sd",
          "dbh_age_ln_intercept",
          "dbh_age_ln_slope",
          "dbh_age_residual_sd",
          "crown_ratio_open",
          "crown_widest_fraction",
          "crown_shape_exponent",
          "insertion_angle_deg",
          "apical_control",
          "leaf_mass_per_area_kg_m2",
          "leaf_life_years",
          "photosynthetic_capacity_umol_m2_s",
          "dark_respiration_ratio",
          "extinction_coefficient",
          "shade_tolerance",
          "leaf_out_temperature_c",
          "leaf_fall_temperature_c",
          "wood_density_kg_m3",
          "sapwood_share_reference",
          "modulus_of_rupture_mpa",
          "root_shoot_ratio",
          "fine_root_leaf_ratio",
          "reserve_branch_max",
          "reserve_stem_max",
          "reserve_root_max",
          "bud_bank_per_limb",
          "trunk_buds_per_m",
          "sprout_readiness",
          "sprout_shoot_length_m",
          "drought_sensitivity",
          "rooting_reach",
          "defoliation_risk",
          "young_leaves_first",
          "deadwood_retention_years",
          "woundwood_vigour",
          "union_weakness",
          "cut_limit_cm",
          "ring_width_max_mm",
          "heartwood_durability",
          "branch_parent_ratio_limit");

  private final SpeciesLibrary library = SpeciesLibrary.load();

  @Test
  void everySpeciesHasExactlyTheTraitsTheModelReads() {
    List<String> wanted = TRAITS.stream().map(trait -> "species." + trait).toList();
    assertThat(library.ids())
        .hasSizeGreaterThanOrEqualTo(26)
        .doesNotHaveDuplicates()
        .isSorted()
        .allSatisfy(
            id ->
                assertThat(library.get(id).numbers().rows())
                    .as(id)
                    .extracting(Sourced::name)
                    .containsExactlyInAnyOrderElementsOf(wanted));
  }

  @Test
  void everyRowIsWellFounded() {
    for (String id : library.ids()) {
      assertThat(library.get(id).numbers().rows())
          .allSatisfy(
              row -> {
                String where = id + " " + row.name();
                assertThat(row.range().contains(row.value())).as(where).isTrue();
                assertThat(row.citation().isEmpty() && row.basis() == Basis.PUBLISHED)
                    .as(where)
                    .isFalse();
                assertThat(row.note().isEmpty() && row.basis() == Basis.ASSUMPTION)
                    .as(where)
                    .isFalse();
                assertThat(row.citation().isEmpty() || Bibliography.load().has(row.citation()))
                    .as(where + " cites " + row.citation())
                    .isTrue();
              });
    }
  }

  @Test
  void aSampledNumberHasRoomToVaryAndStaysWithinAFactorOfTwo() {
    for (String id : library.ids()) {
      assertThat(library.get(id).numbers().rows())
          .filteredOn(Sourced::sampled)
          .hasSizeBetween(10, 18)
          .allSatisfy(
              row ->
                  assertThat(row.range().width())
                      .as(id + " " + row.name())
                      .isPositive()
                      .isLessThanOrEqualTo(1.3 * Math.max(row.value(), 0.1)));
    }
  }

  @Test
  void theLibraryCoversEveryKindOfTree() {
    List<SpeciesTraits> all = library.ids().stream().map(library::get).toList();
    assertThat(all).extracting(SpeciesTraits::leafType).contains(LeafType.values());
    assertThat(all).extracting(SpeciesTraits::leafHabit).contains(LeafHabit.values());
    assertThat(all).extracting(SpeciesTraits::woodAnatomy).contains(WoodAnatomy.values());
    assertThat(all).extracting(SpeciesTraits::compartmentClass).contains(CompartmentClass.values());
    assertThat(all)
        .extracting(tree -> tree.value("sprout_readiness"))
        .anyMatch(v -> v > 0.8)
        .anyMatch(v -> v < 0.05);
  }

  @Test
  void theCutLimitFollowsTheCompartmentClass() {
    for (String id : library.ids()) {
      SpeciesTraits tree = library.get(id);
      double limit = tree.value("cut_limit_cm");
      switch (tree.compartmentClass()) {
        case WEAK -> assertThat(limit).as(id).isEqualTo(5);
        case STRONG -> assertThat(limit).as(id).isEqualTo(10);
        case MODERATE -> assertThat(limit).as(id).isBetween(5.0, 10.0);
      }
    }
  }

  @Test
  void anOpenGrownTreeOfFortyCentimetresHasAPlausibleSize() {
    for (String id : library.ids()) {
      SpeciesTraits tree = library.get(id);
      assertThat(size(tree, "height")).as(id + " height").isBetween(7.0, 22.0);
      assertThat(size(tree, "crown_diameter")).as(id + " crown").isBetween(5.0, 15.6);
      assertThat(size(tree, "leaf_area")).as(id + " leaf area").isBetween(60.0, 1100.0);
      assertThat(tree.value("height_max_m")).as(id).isGreaterThan(size(tree, "height"));
      assertThat(tree.value("crown_diameter_max_m"))
          .as(id)
          .isGreaterThan(size(tree, "crown_diameter"));
    }
  }

  private static double size(SpeciesTraits tree, String what) {
    return Math.exp(
        tree.value(what + "_ln_intercept") + tree.value(what + "_ln_slope") * Math.log(40));
  }

  @Test
  void tellsOwnRowsFromTheGroups() {
    SpeciesEntry lime = library.entry("tilia-cordata");
    assertThat(lime.group()).isEqualTo("broadleaf-diffuse-porous");
    assertThat(lime.own("species.height_ln_slope")).isTrue();
    assertThat(lime.own("species.root_shoot_ratio")).isFalse();
    assertThat(lime.origins())
        .containsEntry("species.root_shoot_ratio", "broadleaf")
        .containsEntry("species.defoliation_risk", "tree");
  }

  @Test
  void findsByIdScientificCommonNameAndSynonym() {
    assertThat(
            List.of(
                "tilia-cordata",
                "Tilia cordata",
                "tilia  CORDATA",
                "Littleleaf linden",
                "small leaved lime"))
        .allSatisfy(
            name ->
                assertThat(library.find(name))
                    .as(name)
                    .map(SpeciesTraits::id)
                    .contains("tilia-cordata"));
    assertThat(library.find("Platanus × hispanica"))
        .map(SpeciesTraits::id)
        .contains("platanus-x-acerifolia");
    assertThat(library.find("Platanus x acerifolia"))
        .map(SpeciesTraits::id)
        .contains("platanus-x-acerifolia");
    assertThat(library.find("tilia cordat")).isEmpty();
    assertThat(library.find("")).isEmpty();
  }

  @Test
  void noTwoSpeciesShareAName() {
    List<String> names =
        library.ids().stream()
            .flatMap(
                id -> {
                  SpeciesEntry entry = library.entry(id);
                  return java.util.stream.Stream.of(
                          List.of(id),
                          entry.traits().commonNames(),
                          entry.synonyms(),
                          List.of(entry.traits().scientificName()))
                      .flatMap(List::stream)
                      .map(SpeciesLibrary::plain)
                      .distinct();
                })
            .collect(Collectors.toList());
    assertThat(names).doesNotHaveDuplicates();
  }

  @Test
  void anUnknownIdIsRefusedWithTheNearest() {
    assertThatThrownBy(() -> library.get("tilia-cordat"))
        .hasMessageContaining("nearest: tilia-cordata");
  }

  @Test
  void aNameCutShortFindsItsSpecies() {
    assertThat(SpeciesLibrary.load().nearest("tila", 2)).allMatch(id -> id.startsWith("tilia"));
    assertThat(SpeciesLibrary.load().nearest("beach", 1)).containsExactly("fagus-sylvatica");
  }
}
