package longbough.runner.batch.page;

import java.util.List;
import longbough.runner.batch.Batch;
import longbough.runner.batch.NotPlayed;
import longbough.runner.batch.Outlook;
import longbough.runner.batch.TreeOutlook;
import longbough.runner.chart.TroubleChart;
import longbough.runner.report.CautionSection;
import longbough.runner.report.ChartFigure;
import longbough.runner.report.Page;
import longbough.runner.report.PageFrame;
import longbough.runner.verdict.Figures;
import longbough.shared.problem.Problem;

/**
 * The page: outcome, picture, ranked list, what the regimes change, what was left out, cautions.
 */
final class BatchPage {
  private static final String TITLE = "Many trees: who is in trouble";

  private static final String STYLE =
      "\nth small { display: block; font-weight: 400; color: #4c5551; }\ntd.size { white-space: nowrap;"
          + " text-align: left; }\n";

  private BatchPage() {}

  static String of(Batch batch, String name, String version) {
    return PageFrame.of(name + " \u2013 " + TITLE, STYLE, page -> body(page, batch, name, version));
  }

  private static void body(Page page, Batch batch, String name, String version) {
    page.open("main");
    page.open("header");
    page.element("h1", TITLE);
    page.element("p", name, "class", "lead");
    page.close();
    page.element("p", BatchWords.outcome(batch));
    if (!batch.ranked().isEmpty()) {
      page.open("section").element("h2", "The ranked list");
      ChartFigure.write(page, TroubleChart.of(batch));
      reasons(page, batch);
      page.close();
      regimes(page, batch);
    }
    leftOut(page, batch);
    page.open("section").element("h2", "How to read this").open("ul");
    BatchWords.reading().forEach(line -> page.element("li", line));
    page.close().close();
    CautionSection.write(page);
    page.close();
    page.open("footer");
    page.element(
        "p",
        "Longbough "
            + version
            + ". Made by \u2018longbough batch\u2019; the same version, trees and seeds give the same"
            + " page. Every figure stands in trees.csv.");
    page.close();
  }

  private static void reasons(Page page, Batch batch) {
    page.scroll().open("table");
    head(page, "Rank", "Tree", "Trunk, height", "What speaks against it, left alone", "Fares best");
    page.open("tbody");
    int rank = 1;
    for (TreeOutlook tree : batch.ranked()) {
      page.open("tr").element("td", Integer.toString(rank++));
      page.open("th", "scope", "row", "class", "word").text(tree.tree().name());
      page.element("small", tree.tree().input().species().commonName()).close();
      page.element("td", BatchWords.size(tree), "class", "size");
      page.element("td", BatchWords.reasons(tree), "class", "word");
      page.element("td", BatchWords.best(tree), "class", "word");
      page.close();
    }
    page.close().close().close();
  }

  private static void regimes(Page page, Batch batch) {
    page.open("section").element("h2", "Under each regime").scroll();
    page.open("table").open("thead").open("tr");
    for (String word : List.of("Tree", "Regime")) {
      page.element("th", word, "scope", "col", "class", "word");
    }
    for (String figure :
        List.of(
            "alive, % (95 %)",
            "lowest reserve, %", "strength lost, %", "leaf missing, %", "cost")) {
      page.element("th", figure, "scope", "col");
    }
    page.close().close().open("tbody");
    for (TreeOutlook tree : batch.ranked()) {
      String currency = tree.tree().input().crew().currency();
      for (Outlook outlook : tree.outlooks()) {
        boolean first = outlook.equals(tree.alone());
        page.open("tr").element("th", first ? tree.tree().name() : "", "scope", "row");
        page.element("td", outlook.regime(), "class", "word");
        page.element("td", BatchWords.alive(outlook));
        page.element("td", Long.toString(BatchWords.percent(outlook.reserve())));
        page.element("td", Long.toString(BatchWords.percent(outlook.strengthLoss())));
        String leaf = Long.toString(BatchWords.percent(outlook.leafMissing()));
        page.element("td", leaf.replace('-', '\u2212'));
        page.element("td", Figures.number(Math.rint(outlook.cost())) + "\u00a0" + currency);
        page.close();
      }
    }
    page.close().close().close().close();
  }

  private static void leftOut(Page page, Batch batch) {
    if (batch.notPlayed().isEmpty()) {
      return;
    }
    page.open("section").element("h2", "Left out");
    page.element("p", "These could not be read or played. Mend them and play the batch again.");
    page.open("ul");
    for (NotPlayed one : batch.notPlayed()) {
      page.open("li").element("strong", one.name()).open("ul");
      for (Problem problem : one.problems()) {
        page.element("li", problem.message().replace("\n", ";"));
      }
      page.close().close();
    }
    page.close().close();
  }

  private static void head(Page page, String... words) {
    page.open("thead").open("tr");
    for (String word : words) {
      page.element("th", word, "scope", "col", "class", "word");
    }
    page.close().close();
  }
}
