package longbough.runner.report;

import java.util.List;

/** What a page of ours is not, and what stands above it. */
public final class CautionSection implements Section {
  private static final List<String> CAUTIONS =
      List.of(
          "A simulated probability is never a safety clearance. Whether a tree may stand is judged on"
              + " site, by a qualified arborist, with its targets in view.",
          "Have the tree inspected by a qualified arborist before any work is planned or done; the model"
              + " knows only what was entered.",
          "Near power lines no one but trained and authorized line-clearance staff may work, at the"
              + " distances that the network operator and the law set.",
          "Check tree-protection law, permits and local codes first; where they ask for more or allow"
              + " less than this report, they hold.",
          "Look for nests, bats and other protected wildlife before each visit, and keep to the closed"
              + " seasons.",
          "Where licensed practice, a local standard or the arborist on site differ from this report,"
              + " follow them.");

  @Override
  public void write(Page page, ReportInput input) {
    write(page);
  }

  /** Writes the part into any page. */
  public static void write(Page page) {
    page.open("section", "aria-labelledby", "cautions");
    page.element("h2", "Cautions", "id", "cautions");
    page.open("ul", "class", "caution");
    CAUTIONS.forEach(caution -> page.element("li", caution));
    page.close().close();
  }
}
