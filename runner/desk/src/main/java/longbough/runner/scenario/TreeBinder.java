package longbough.runner.scenario;

import longbough.runner.scenario.written.WrittenCavity;
import longbough.runner.scenario.written.WrittenLimb;
import longbough.runner.scenario.written.WrittenPruning;
import longbough.runner.scenario.written.WrittenSpread;
import longbough.runner.scenario.written.WrittenTopping;
import longbough.runner.scenario.written.WrittenTree;
import longbough.runner.scenario.written.WrittenWound;
import longbough.runner.yaml.Fields;
import longbough.runner.yaml.Given;

/** The block {@code tree}. */
final class TreeBinder {

  private TreeBinder() {}

  static WrittenTree bind(Fields tree) {
    return new WrittenTree(
        tree.text("species"),
        tree.number("trunk_diameter_cm"),
        tree.number("height_m"),
        tree.number("crown_base_m"),
        spread(tree),
        tree.number("leader_growth_cm"),
        tree.level("condition", word -> Presets.word("condition", word)),
        tree.level("dieback", word -> Presets.word("dieback", word)),
        tree.maps("cavities", "cavity").stream().map(TreeBinder::cavity).toList(),
        tree.maps("old_wounds", "wound").stream().map(TreeBinder::wound).toList(),
        tree.maps("topped", "topping").stream().map(TreeBinder::topping).toList(),
        tree.map("last_pruned", "pruned").map(TreeBinder::pruned),
        tree.number("root_plate_lost"),
        tree.maps("limbs", "limb").stream().map(TreeBinder::limb).toList(),
        tree.text("notes"));
  }

  private static WrittenTopping topping(Fields topping) {
    return new WrittenTopping(
        topping.number("height_m"), topping.number("years_ago"), topping.number("cut_diameter_cm"));
  }

  private static WrittenPruning pruned(Fields pruned) {
    return new WrittenPruning(pruned.number("years_ago"), pruned.number("foliage_removed"));
  }

  private static WrittenSpread spread(Fields tree) {
    if (!tree.holdsMap("crown_spread_m")) {
      Given<Double> none = Given.absent("tree.crown_spread_m", tree.place());
      return new WrittenSpread(tree.number("crown_spread_m"), none, none, none, none);
    }
    Fields reach = tree.map("crown_spread_m", "spread").orElseThrow();
    return new WrittenSpread(
        Given.absent(reach.path(), reach.place()),
        reach.number("north"),
        reach.number("east"),
        reach.number("south"),
        reach.number("west"));
  }

  private static WrittenCavity cavity(Fields cavity) {
    return new WrittenCavity(
        cavity.number("height_m"),
        cavity.number("length_m"),
        cavity.number("sound_wall_cm"),
        cavity.number("bearing_deg"),
        cavity.number("opening_cm"));
  }

  private static WrittenWound wound(Fields wound) {
    return new WrittenWound(
        wound.number("height_m"),
        wound.number("diameter_cm"),
        wound.number("age_years"),
        wound.number("bearing_deg"),
        wound.number("still_open_cm"));
  }

  private static WrittenLimb limb(Fields limb) {
    return new WrittenLimb(
        limb.number("height_m"),
        limb.number("diameter_cm"),
        limb.number("length_m"),
        limb.number("bearing_deg"),
        limb.number("angle_deg"),
        limb.flag("dead"));
  }
}
