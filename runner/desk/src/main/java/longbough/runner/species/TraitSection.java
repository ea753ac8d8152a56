package longbough.runner.species;

import java.util.List;

/** The order in which a species' numbers are shown: by what they are about. */
enum TraitSection {
  SIZE(
      "Size, open-grown: ln y = intercept + slope ln x, x is dbh in cm or age in years",
      List.of("height_", "crown_diameter_", "leaf_area_", "dbh_age_")),
  SHAPE(
      "Shape of the crown",
      List.of("crown_ratio_", "crown_widest_", "crown_shape_", "insertion_", "apical_")),
  LEAVES(
      "Leaves and seasons",
      List.of(
          "leaf_mass_",
          "leaf_life_",
          "photosynthetic_",
          "dark_",
          "extinction_",
          "shade_",
          "leaf_out_",
          "leaf_fall_")),
  WOOD("Wood", List.of("wood_", "sapwood_", "modulus_", "ring_", "heartwood_")),
  RESERVE("Roots and reserve", List.of("root_", "rooting_", "fine_root_", "reserve_")),
  SPROUTS("Sprouting", List.of("bud_", "sprout_", "trunk_buds_")),
  WOUNDS("Wounds and unions", List.of("woundwood_", "cut_", "branch_parent_", "union_")),
  STRESS("Stress and deadwood", List.of("drought_", "defoliation_", "young_leaves_", "deadwood_")),
  OTHER("Other", List.of(""));

  private final String title;
  private final List<String> prefixes;

  TraitSection(String title, List<String> prefixes) {
    this.title = title;
    this.prefixes = prefixes;
  }

  String title() {
    return title;
  }

  /** The section of a trait, by its bare name without {@code species.}. */
  static TraitSection of(String trait) {
    for (TraitSection section : values()) {
      if (section.prefixes.stream().anyMatch(trait::startsWith)) {
        return section;
      }
    }
    return OTHER;
  }
}
