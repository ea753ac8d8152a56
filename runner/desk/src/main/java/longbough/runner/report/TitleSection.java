package longbough.runner.report;

import java.util.Arrays;
import longbough.model.SimulationInput;

/** Title, what was compared and the tree, in a line each. */
final class TitleSection implements Section {

  private static String tree(SimulationInput asked) {
    double[] spread = asked.tree().spreadM();
    return "Trunk "
        + Words.cm(asked.tree().dbhM())
        + " thick, "
        + Words.metres(asked.tree().heightM())
        + " tall, crown "
        + Words.metres(Arrays.stream(spread).average().orElse(0))
        + " wide.";
  }

  @Override
  public void write(Page page, ReportInput input) {
    SimulationInput asked = input.comparison().input();
    page.open("header");
    page.element("h1", asked.title());
    page.open("p", "class", "lead");
    page.text(asked.species().commonName() + " (").element("i", asked.species().scientificName());
    page.text("), " + Words.count(asked.regimes().size(), "pruning regime") + " over ");
    page.text(Words.count(input.comparison().years(), "year") + " in ");
    page.text(Words.count(input.comparison().members(), "future") + ", the same for each regime.");
    page.close();
    page.element("p", tree(asked), "class", "lead");
    page.close();
    if (!input.about().isBlank()) {
      page.element("p", input.about().strip());
    }
  }
}
