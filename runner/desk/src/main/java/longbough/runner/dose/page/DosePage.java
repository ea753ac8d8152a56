package longbough.runner.dose.page;

import java.util.List;
import longbough.runner.chart.DoseChart;
import longbough.runner.dose.DoseCell;
import longbough.runner.dose.DoseTable;
import longbough.runner.dose.DryCase;
import longbough.runner.dose.Turnabout;
import longbough.runner.report.CautionSection;
import longbough.runner.report.ChartFigure;
import longbough.runner.report.Page;
import longbough.runner.report.PageFrame;

/** The page: for each tree the picture and the table, then how to read them and the cautions. */
final class DosePage {

  private DosePage() {}

  static String of(List<DoseTable> tables, String version) {
    return PageFrame.of("Recovery or starvation", "", page -> body(page, tables, version));
  }

  private static void body(Page page, List<DoseTable> tables, String version) {
    page.open("main");
    page.open("header");
    page.element("h1", "Recovery or starvation");
    page.element(
        "p",
        "What one thinning costs a tree, by dose and by how dry the years are.",
        "class",
        "lead");
    page.close();
    tables.forEach(table -> tree(page, table));
    page.open("section");
    page.element("h2", "How to read this");
    page.open("ul");
    DoseWords.reading(tables.get(0)).forEach(line -> page.element("li", line));
    page.close().close();
    CautionSection.write(page);
    page.close();
    page.open("footer");
    page.element(
        "p",
        "Longbough "
            + version
            + ". Made by \u2018longbough dose\u2019; the same version, scenarios and seed give the same"
            + " page. The numbers stand in dose.csv.");
    page.close();
  }

  private static void tree(Page page, DoseTable table) {
    page.open("section");
    page.element("h2", table.input().title());
    page.element("p", DoseWords.tree(table.input()) + ".");
    ChartFigure.write(page, DoseChart.of(table));
    page.scroll().open("table");
    head(page);
    page.open("tbody");
    for (int dose = 0; dose < table.doses().size(); dose++) {
      page.open("tr");
      String name = DoseWords.dose(table.cell(DryCase.NONE, dose));
      page.element("th", name, "scope", "row");
      for (DryCase dry : DryCase.values()) {
        DoseCell cell = table.cell(dry, dose);
        page.element("td", DoseWords.alive(cell));
        page.element("td", DoseWords.full(cell, table.input().years()));
      }
      page.close();
    }
    page.close().close().close();
    List<Turnabout> turnabouts = Turnabout.of(table);
    if (!turnabouts.isEmpty()) {
      page.element("h3", "Where more is not worse, over the same futures");
      page.open("ul");
      turnabouts.forEach(turnabout -> page.element("li", turnabout.sentence()));
      page.close();
    }
    page.close();
  }

  private static void head(Page page) {
    page.open("thead").open("tr");
    page.element("th", "Thinned", "scope", "col", "rowspan", "2");
    for (DryCase dry : DryCase.values()) {
      page.element("th", dry.label(), "scope", "colgroup", "colspan", "2");
    }
    page.close().open("tr");
    for (DryCase dry : DryCase.values()) {
      page.element("th", "alive, % (95 %)", "scope", "col");
      page.element("th", "full again, year", "scope", "col");
    }
    page.close().close();
  }
}
