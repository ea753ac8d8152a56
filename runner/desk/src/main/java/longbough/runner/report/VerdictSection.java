package longbough.runner.report;

import longbough.runner.verdict.Verdict;

/** The verdict in plain words with its certainty. */
final class VerdictSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "verdict");
    page.element("h2", "The verdict", "id", "verdict");
    page.open("ul", "class", "verdict");
    Verdict.of(input.summary()).forEach(sentence -> page.element("li", sentence));
    page.close();
    page.element(
        "p",
        "A future is one sampled course of weather, stress and uncertain growth; every regime meets"
            + " the same futures, so differences are taken future by future. \u201cAlmost surely\u201d"
            + " means in at least 95 of 100 futures, \u201cprobably\u201d in at least 80, \u201cperhaps\u201d"
            + " in at least 65; below that the regimes are not told apart. These are futures of a model,"
            + " not of your tree.",
        "class",
        "note");
    page.close();
  }
}
