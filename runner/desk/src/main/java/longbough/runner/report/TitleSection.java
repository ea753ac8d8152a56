package longbough.runner.report;

import longbough.model.SimulationInput;

/** Title and what was compared, in one line. */
final class TitleSection implements Section {

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
    page.close();
  }
}
