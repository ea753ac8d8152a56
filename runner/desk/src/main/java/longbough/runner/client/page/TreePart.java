package longbough.runner.client.page;

import longbough.model.SimulationInput;
import longbough.model.parameter.Site;
import longbough.model.tree.MeasuredTree;
import longbough.runner.client.words.Amounts;
import longbough.runner.report.Page;

/** The tree as measured and what was found on site. */
final class TreePart implements Part {

  @Override
  public void write(Page page, ClientInput input) {
    page.open("section", "aria-labelledby", "tree");
    page.element("h2", input.say("tree.heading"), "id", "tree");
    if (!input.client().found().isEmpty()) {
      page.element("h3", input.say("tree.found"));
      page.open("ul", "class", "own");
      input.client().found().forEach(line -> page.element("li", line));
      page.close();
      page.element("h3", input.say("tree.measured"));
    }
    page.open("dl", "class", "facts");
    tree(page, input, input.amounts());
    decay(page, input, input.amounts());
    site(page, input, input.amounts());
    page.close();
    page.close();
  }

  private static void tree(Page page, ClientInput input, Amounts amounts) {
    SimulationInput asked = input.asked();
    MeasuredTree tree = asked.tree();
    item(page, input, "tree.trunk", amounts.centimetres(tree.dbhM()));
    item(page, input, "tree.height", amounts.metres(tree.heightM()));
    item(page, input, "tree.crown_base", amounts.metres(tree.crownBaseM()));
    item(page, input, "tree.spread", spread(input, tree.spreadM()));
    if (!Double.isNaN(tree.leaderGrowthM())) {
      String grown = amounts.centimetres(tree.leaderGrowthM());
      item(page, input, "tree.leader", input.say("tree.leader_a_year", grown));
    }
    item(
        page,
        input,
        "tree.condition",
        input.say("tree.condition_share", amounts.percent(tree.condition())));
    item(
        page,
        input,
        "tree.decay_class",
        input.say("decay_class." + Amounts.key(asked.species().compartmentClass())));
    item(
        page,
        input,
        "tree.limbs",
        tree.limbs().isEmpty()
            ? input.say("tree.limbs_rebuilt")
            : input.say("tree.limbs_listed", amounts.number(tree.limbs().size())));
  }

  private static void decay(Page page, ClientInput input, Amounts amounts) {
    MeasuredTree tree = input.asked().tree();
    for (MeasuredTree.KnownCavity cavity : tree.cavities()) {
      item(
          page,
          input,
          "tree.cavity",
          input.say(
              "tree.cavity_is",
              amounts.metres(cavity.heightM()),
              amounts.metres(cavity.lengthM()),
              amounts.centimetres(cavity.soundWallM())));
    }
    for (MeasuredTree.OldWound wound : tree.oldWounds()) {
      item(
          page,
          input,
          "tree.wound",
          input.say(
              wound.openWidthM() > 0 ? "tree.wound_open" : "tree.wound_closed",
              amounts.metres(wound.heightM()),
              amounts.centimetres(wound.cutDiameterM()),
              amounts.years(Math.round(wound.ageYears())),
              amounts.centimetres(wound.openWidthM())));
    }
    if (tree.rootPlateLost() > 0) {
      item(page, input, "tree.roots_lost", amounts.percent(tree.rootPlateLost()));
    }
  }

  private static void site(Page page, ClientInput input, Amounts amounts) {
    Site site = input.asked().site();
    item(page, input, "site.openness", amounts.percent(site.openness()));
    item(
        page,
        input,
        "site.water",
        input.say("unit.millimetres", amounts.number(site.soilWaterCapacityMm())));
    item(
        page,
        input,
        "site.wind",
        input.say("site.wind_share", amounts.percent(site.windExposure())));
  }

  // Twice the reach in each direction is kept as spread; one number is shown where all agree.
  private static String spread(ClientInput input, double[] spread) {
    Amounts amounts = input.amounts();
    boolean same = true;
    for (double side : spread) {
      same &= side == spread[0];
    }
    return spread.length < 4 || same
        ? amounts.metres(spread[0])
        : input.say(
            "tree.reach",
            amounts.metres(spread[0] / 2),
            amounts.metres(spread[1] / 2),
            amounts.metres(spread[2] / 2),
            amounts.metres(spread[3] / 2));
  }

  private static void item(Page page, ClientInput input, String key, String value) {
    page.open("div").element("dt", input.say(key)).element("dd", value).close();
  }
}
