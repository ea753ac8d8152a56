package longbough.runner.cuts.page;

import java.util.List;
import java.util.Locale;
import longbough.runner.cuts.CutTable;
import longbough.runner.cuts.CutTrial;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.report.CautionSection;
import longbough.runner.report.ChartFigure;
import longbough.runner.report.Page;
import longbough.runner.report.PageFrame;

/** The page: for each species the chart, the closing faces drawn to scale, and the table. */
public final class CutPage {
  /** Size of branch whose faces are drawn, m. */
  private static final double DRAWN_M = 0.12;

  private CutPage() {}

  public static String of(CutTable table, String version) {
    return PageFrame.of("Collar, stub and flush cuts", "", page -> body(page, table, version));
  }

  /** The pictures of one species. */
  static List<Scene> pictures(CutTable table, String species) {
    List<CutTrial> drawn =
        table.trials().stream()
            .filter(trial -> trial.species().equals(species) && trial.diameterM() == DRAWN_M)
            .toList();
    return List.of(
        CutChart.draw(table, species),
        ClosingPicture.draw(CutWords.species(species).split(",")[0], drawn));
  }

  private static void body(Page page, CutTable table, String version) {
    page.open("main");
    page.open("header");
    page.element("h1", "Collar, stub and flush cuts");
    page.element("p", table.setting(), "class", "lead");
    page.close();
    table.trials().stream()
        .map(CutTrial::species)
        .distinct()
        .forEach(species -> species(page, table, species));
    page.open("section");
    page.element("h2", "How to read this");
    page.open("ul");
    page.element(
        "li", "Closed is not sound: woundwood may cover a wound behind which decay has run far.");
    page.element(
        "li",
        "A collar cut closes as an even ring. A flush cut closes at its sides and hardly at top and"
            + " bottom. Nothing grows past a stub until it has rotted back or is grown round.");
    page.element(
        "li",
        "Column: discoloured or decayed wood above and below the cut. Section and strength: share"
            + " lost where the trunk is worst. Decay stays inside the trunk of the year of the cut.");
    page.element(
        "li",
        "A bare trunk without crown, invented, with the mean numbers of the species: trees differ"
            + " widely around them.");
    page.close().close();
    CautionSection.write(page);
    page.close();
    page.open("footer");
    page.element(
        "p",
        "Longbough "
            + version
            + ". Made by \u2018longbough cuts --html\u2019; the same version gives the same page.");
    page.close();
  }

  private static void species(Page page, CutTable table, String species) {
    page.open("section");
    page.element("h2", CutWords.species(species));
    for (Scene scene : pictures(table, species)) {
      ChartFigure.write(page, scene);
    }
    page.scroll().open("table");
    page.open("thead").open("tr");
    for (String head :
        List.of(
            "Branch",
            "Cut",
            "Closed after",
            "Column up",
            "Column down",
            "Depth",
            "Section lost",
            "Strength lost")) {
      page.element("th", head, "scope", "col");
    }
    page.close().close().open("tbody");
    for (CutTrial trial : table.trials()) {
      if (trial.species().equals(species)) {
        row(page, trial);
      }
    }
    page.close().close().close().close();
  }

  private static void row(Page page, CutTrial trial) {
    page.open("tr");
    page.element("th", CutWords.centimetres(trial.diameterM()), "scope", "row");
    page.element("td", CutWords.placement(trial.placement()).toLowerCase(Locale.ROOT));
    page.element(
        "td",
        Double.isNaN(trial.closedYears())
            ? "still open"
            : Words.whole(trial.closedYears()) + " years");
    page.element("td", Words.twoDecimals(trial.columnUpM()) + " m");
    page.element("td", Words.twoDecimals(trial.columnDownM()) + " m");
    page.element("td", Words.oneDecimal(100 * trial.depthM()) + " cm");
    page.element("td", Words.oneDecimal(100 * trial.sectionShare()) + " %");
    page.element("td", Words.oneDecimal(100 * trial.strengthLoss()) + " %");
    page.close();
  }
}
