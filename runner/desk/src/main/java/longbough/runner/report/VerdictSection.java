package longbough.runner.report;

import longbough.runner.verdict.Verdict;

/** The verdict in plain words with its certainty. */
final class VerdictSection implements Section {

  @Override
  public void write(Page page, ReportInput input) {
    page.open("section", "aria-labelledby", "verdict");
    page.element("h2", "The verdict", "id", "verdict");
    page.open("ul", "class", "verdict");
    Verdict.of(input.summary()).forEach(sentence -> sentence(page, sentence));
    page.close();
    input.overview().ifPresent(picture -> picture(page, picture, input.comparison().members()));
    page.element(
        "p",
        "A future is one sampled course of weather, stress and uncertain growth; every regime meets"
            + " the same futures, so differences are taken future by future. \u201cAlmost surely\u201d"
            + " means in at least 95 of 100 futures, \u201cprobably\u201d in at least 80, \u201cperhaps\u201d"
            + " in at least 65; below that the regimes are not told apart. These are futures of a model,"
            + " not of your tree, and no simulated probability is a safety clearance: see the cautions.",
        "class",
        "note");
    page.close();
  }

  // What a sentence claims stands out from the figures that bear it.
  private static void sentence(Page page, String sentence) {
    int claim = sentence.indexOf("): ") + 1;
    page.open("li");
    if (claim > 0) {
      page.element("strong", sentence.substring(0, claim));
    }
    page.text(sentence.substring(claim)).close();
  }

  private static void picture(Page page, Picture picture, int futures) {
    page.open("figure", "role", "group", "aria-label", picture.title(), "class", "overview");
    page.markup(picture.element());
    page.element(
        "figcaption",
        "One future of " + futures + ", out of the middle; the others differ, see the charts.");
    page.close();
  }
}
