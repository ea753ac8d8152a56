package longbough.runner.report;

import longbough.model.SimulationInput;
import longbough.model.parameter.Site;
import longbough.model.tree.MeasuredTree;
import longbough.runner.verdict.Figures;

/** The tree and the site as they were given. */
final class TreeSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    SimulationInput asked = input.comparison().input();
    page.open("section", "aria-labelledby", "tree");
    page.element("h2", "The tree and the site", "id", "tree");
    page.open("dl");
    tree(page, asked);
    site(page, asked);
    page.close();
    page.close();
  }

  private static void tree(Page page, SimulationInput asked) {
    MeasuredTree tree = asked.tree();
    item(page, "Species", asked.species().commonName() + ", " + asked.species().scientificName());
    item(
        page,
        "Decay resistance",
        Words.of(asked.species().compartmentClass()) + " compartmentalizer");
    item(page, "Trunk diameter at 1.3 m", Words.cm(tree.dbhM()));
    item(page, "Height", Words.metres(tree.heightM()));
    item(page, "Crown base", Words.metres(tree.crownBaseM()));
    item(page, "Crown spread", spread(tree.spreadM()));
    if (!Double.isNaN(tree.leaderGrowthM())) {
      item(page, "Leading shoot", Words.cm(tree.leaderGrowthM()) + " a year");
    }
    item(page, "Condition", Figures.percent(tree.condition()) + " of a sound, vigorous tree");
    for (MeasuredTree.KnownCavity cavity : tree.cavities()) {
      item(page, "Known decay", cavity(cavity));
    }
    for (MeasuredTree.OldWound wound : tree.oldWounds()) {
      item(page, "Old wound", wound(wound));
    }
    item(page, "Root plate lost", Figures.percent(tree.rootPlateLost()));
    item(
        page,
        "Limbs",
        tree.limbs().isEmpty()
            ? "reconstructed from the tree's size; trunk, height and crown as measured"
            : Words.count(tree.limbs().size(), "limb") + " from an inventory");
  }

  private static void site(Page page, SimulationInput asked) {
    Site site = asked.site();
    item(page, "Open sky at the sides", Figures.percent(site.openness()));
    item(page, "Soil water store", Figures.number(site.soilWaterCapacityMm()) + "\u00a0mm");
    item(
        page,
        "Wind at the tree",
        Figures.percent(site.windExposure()) + " of the speed in open country");
    item(page, "Soil quality", Figures.number(site.growthFactor()) + " (1 is ordinary)");
    item(
        page,
        "Climate",
        asked.climate().name().replace('_', ' ')
            + ", latitude "
            + Figures.number(asked.climate().latitudeDeg())
            + "\u00b0");
  }

  // Twice the reach in each direction is kept as spread; one number is shown where all agree.
  private static String spread(double[] spread) {
    boolean same = true;
    for (double side : spread) {
      same &= side == spread[0];
    }
    if (spread.length < 4 || same) {
      return Words.metres(spread[0]);
    }
    return "reach north "
        + Words.metres(spread[0] / 2)
        + ", east "
        + Words.metres(spread[1] / 2)
        + ", south "
        + Words.metres(spread[2] / 2)
        + ", west "
        + Words.metres(spread[3] / 2);
  }

  private static String cavity(MeasuredTree.KnownCavity cavity) {
    String opening = cavity.openWidthM() > 0 ? ", opening " + Words.cm(cavity.openWidthM()) : "";
    return "at "
        + Words.metres(cavity.heightM())
        + ", "
        + Words.metres(cavity.lengthM())
        + " long, least sound wall "
        + Words.cm(cavity.soundWallM())
        + opening;
  }

  private static String wound(MeasuredTree.OldWound wound) {
    return "at "
        + Words.metres(wound.heightM())
        + ", cut of "
        + Words.cm(wound.cutDiameterM())
        + ", "
        + Words.count(Math.round(wound.ageYears()), "year")
        + " old, "
        + (wound.openWidthM() > 0 ? Words.cm(wound.openWidthM()) + " still open" : "closed");
  }

  private static void item(Page page, String name, String value) {
    page.element("dt", name).element("dd", value);
  }
}
