package longbough.runner.scenario;

import java.util.List;
import longbough.runner.scenario.written.WrittenCavity;
import longbough.runner.scenario.written.WrittenLimb;
import longbough.runner.scenario.written.WrittenTopping;
import longbough.runner.scenario.written.WrittenTree;
import longbough.runner.scenario.written.WrittenWound;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.Plain;
import longbough.shared.trait.SpeciesLibrary;

/** Values of the tree that cannot be true together. Looks only at those that are usable alone. */
final class TreeChecks {

  private final WrittenTree tree;
  private final Mistakes mistakes;
  private final double heightM;
  private final double trunkM;

  private TreeChecks(WrittenTree tree, Mistakes mistakes) {
    this.tree = tree;
    this.mistakes = mistakes;
    // Unknown values are NaN: every comparison with them is false, so nothing is said about them.
    heightM = tree.heightM().or(Double.NaN);
    trunkM = tree.trunkDiameterCm().or(Double.NaN) / 100;
  }

  static void check(WrittenTree tree, Mistakes mistakes) {
    TreeChecks checks = new TreeChecks(tree, mistakes);
    checks.species();
    if (checks.slips()) {
      return;
    }
    checks.crownBase();
    checks.spread();
    checks.leader();
    tree.cavities().forEach(checks::cavity);
    tree.oldWounds().forEach(checks::wound);
    tree.topped().forEach(checks::topping);
    tree.limbs().forEach(checks::limb);
  }

  private void species() {
    Given<String> species = tree.species();
    if (species.present() && SpeciesLibrary.load().find(species.value()).isEmpty()) {
      List<String> nearest = SpeciesLibrary.load().nearest(species.value(), 3);
      mistakes.add(
          species.place(),
          species.field(),
          "unknown species " + Mistakes.quoted(species.value()),
          "a species of the library",
          "nearest: " + String.join(", ", nearest) + "; 'longbough species' lists all");
    }
  }

  /** Whether trunk and height cannot both be right; then nothing can be measured against them. */
  private boolean slips() {
    double ratio = heightM / trunkM;
    double least = Presets.check("least_height_over_diameter");
    double most = Presets.check("most_height_over_diameter");
    boolean slips = ratio < least || ratio > most;
    if (slips) {
      wrong(
          tree.heightM(),
          Plain.number(heightM) + " m on a trunk of " + cm(trunkM),
          "a height of " + Plain.number(least) + " to " + Plain.number(most) + " trunk diameters",
          "check both: the trunk is in centimetres, the height in metres");
    }
    return slips;
  }

  private void crownBase() {
    double most = Presets.check("most_crown_base_over_height") * heightM;
    if (tree.crownBaseM().or(0.0) > most) {
      wrong(
          tree.crownBaseM(),
          Plain.number(tree.crownBaseM().value())
              + " m on a tree of "
              + Plain.number(heightM)
              + " m",
          "up to " + Plain.number(most) + " m",
          "crown_base_m is the height of the lowest living limb");
    }
  }

  private void spread() {
    double spreadM = tree.spread().meanDiameterM();
    Given<Double> at =
        tree.spread().byDirection() ? tree.spread().northM() : tree.spread().diameterM();
    double most =
        Math.min(
            Presets.check("most_spread_over_height") * heightM,
            Presets.check("most_spread_over_diameter") * trunkM);
    if (spreadM > most) {
      wrong(
          at,
          "a crown "
              + Plain.number(spreadM)
              + " m wide on a tree of "
              + Plain.number(heightM)
              + " m with a trunk of "
              + cm(trunkM),
          "up to " + Plain.number(most) + " m",
          "one number is the crown's diameter; by direction it is the reach from the trunk");
    } else if (spreadM == 0) {
      wrong(
          at,
          "no reach in any direction",
          "a crown of some width",
          "give the reach from the trunk in metres");
    }
  }

  private void leader() {
    double grownM = tree.leaderGrowthCm().or(0.0) / 100;
    if (grownM > heightM) {
      wrong(
          tree.leaderGrowthCm(),
          cm(grownM) + " a year on a tree of " + Plain.number(heightM) + " m",
          "up to the tree's height",
          "leader_growth_cm is the length by which the leading shoot grows in one year");
    }
  }

  private void cavity(WrittenCavity cavity) {
    below(cavity.heightM(), "the cavity");
    if (cavity.soundWallCm().or(0.0) > 100 * trunkM / 2) {
      wrong(
          cavity.soundWallCm(),
          Plain.number(cavity.soundWallCm().value()) + " cm",
          "up to half the trunk's diameter, " + Plain.number(100 * trunkM / 2) + " cm",
          "sound_wall_cm is the least thickness of sound wood around the cavity");
    }
    if (cavity.openingCm().or(0.0) > 100 * trunkM) {
      wrong(
          cavity.openingCm(),
          Plain.number(cavity.openingCm().value()) + " cm on a trunk of " + cm(trunkM),
          "up to the trunk's diameter",
          "opening_cm is the width of the opening");
    }
  }

  private void wound(WrittenWound wound) {
    below(wound.heightM(), "the wound");
    double most = 100 * trunkM * Presets.check("most_old_wound_over_trunk");
    if (wound.diameterCm().or(0.0) > most) {
      wrong(
          wound.diameterCm(),
          Plain.number(wound.diameterCm().value()) + " cm on a trunk of " + cm(trunkM),
          "up to " + Plain.number(most) + " cm",
          "diameter_cm is that of the cut when it was made");
    }
    if (wound.stillOpenCm().or(0.0) > wound.diameterCm().or(Double.NaN)) {
      wrong(
          wound.stillOpenCm(),
          Plain.number(wound.stillOpenCm().value())
              + " cm of a cut of "
              + Plain.number(wound.diameterCm().value())
              + " cm",
          "up to the diameter of the cut",
          "check both");
    }
  }

  private void topping(WrittenTopping topping) {
    below(topping.heightM(), "the topping cut");
    double most = 100 * trunkM * Presets.check("most_old_wound_over_trunk");
    if (topping.cutDiameterCm().or(0.0) > most) {
      wrong(
          topping.cutDiameterCm(),
          Plain.number(topping.cutDiameterCm().value()) + " cm on a trunk of " + cm(trunkM),
          "up to " + Plain.number(most) + " cm",
          "cut_diameter_cm is that of the largest cut");
    }
  }

  private void limb(WrittenLimb limb) {
    below(limb.heightM(), "the limb");
    double most = 100 * trunkM * Presets.check("most_limb_over_trunk");
    if (limb.diameterCm().or(0.0) > most) {
      wrong(
          limb.diameterCm(),
          Plain.number(limb.diameterCm().value()) + " cm on a trunk of " + cm(trunkM),
          "up to " + Plain.number(most) + " cm",
          "diameter_cm is that of the limb at its base");
    }
    boolean living = !limb.dead().or(false);
    if (living && limb.heightM().or(Double.NaN) < tree.crownBaseM().or(Double.NaN)) {
      wrong(
          limb.heightM(),
          "a living limb at "
              + Plain.number(limb.heightM().value())
              + " m, below the crown base at "
              + Plain.number(tree.crownBaseM().value())
              + " m",
          "living limbs from the crown base up",
          "lower crown_base_m, or mark the limb 'dead: true'");
    }
  }

  private void below(Given<Double> height, String what) {
    if (height.or(0.0) > heightM) {
      wrong(
          height,
          what
              + " at "
              + Plain.number(height.value())
              + " m on a tree of "
              + Plain.number(heightM)
              + " m",
          "up to the tree's height",
          "heights are in metres above ground");
    }
  }

  private void wrong(Given<Double> at, String found, String allowed, String mend) {
    mistakes.add(at.place(), at.field(), found, allowed, mend);
  }

  private static String cm(double metres) {
    return Plain.number(100 * metres) + " cm";
  }
}
