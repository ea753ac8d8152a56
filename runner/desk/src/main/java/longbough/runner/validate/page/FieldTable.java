package longbough.runner.validate.page;

import java.util.List;
import java.util.Optional;
import longbough.runner.report.Page;
import longbough.runner.validate.field.HiddenLeaf;
import longbough.runner.validate.field.Relation;
import longbough.runner.validate.field.RelationTrial;
import longbough.runner.validate.field.SpeciesTrial;

/** One line a species: how its trees in the model lie in the bands of the measured ones. */
final class FieldTable {
  private static final List<String> PARTS = List.of("in 50\u00a0%", "in 95\u00a0%", "bias");
  private static final List<String> HIDDEN = List.of("n", "R\u00b2", "bias");

  private FieldTable() {}

  static void write(Page page, List<SpeciesTrial> trials) {
    page.scroll().open("table", "class", "field");
    page.element(
        "caption",
        "Share of the model's yearly sizes in the bands, and bias: mean of ln (model / expected), so"
            + " that \u22120.10 is a tenth too little and \u22120.69 half. Leaf found again: trees"
            + " rebuilt from trunk, height and crown width, with leaf area hidden.");
    page.open("thead").open("tr");
    page.element("th", "Species", "scope", "col", "rowspan", "2");
    for (Relation relation : Relation.values()) {
      page.element("th", capital(relation.word()), "scope", "colgroup", "colspan", "3");
    }
    page.element("th", "Leaf found again", "scope", "colgroup", "colspan", "3");
    page.close().open("tr");
    for (int i = 0; i < Relation.values().length; i++) {
      PARTS.forEach(part -> page.element("th", part, "scope", "col"));
    }
    HIDDEN.forEach(part -> page.element("th", part, "scope", "col"));
    page.close().close().open("tbody");
    trials.forEach(trial -> row(page, trial));
    page.close().close().close();
  }

  private static void row(Page page, SpeciesTrial trial) {
    page.open("tr").open("th", "scope", "row");
    page.open("i").text(trial.species().scientificName()).close().close();
    for (Relation relation : Relation.values()) {
      cells(page, trial.relation(relation));
    }
    HiddenLeaf hidden = trial.hidden();
    page.element("td", String.valueOf(hidden.n()));
    page.element("td", String.format(java.util.Locale.ROOT, "%.2f", hidden.r2()));
    page.element("td", SpeciesFigure.signed(hidden.lnBias()));
    page.close();
  }

  private static void cells(Page page, Optional<RelationTrial> trial) {
    boolean any = trial.isPresent() && trial.get().points() > 0;
    page.element("td", any ? SpeciesFigure.percent(trial.get().share50()) : "\u2013");
    page.element("td", any ? SpeciesFigure.percent(trial.get().share95()) : "\u2013");
    page.element("td", any ? SpeciesFigure.signed(trial.get().lnBias()) : "\u2013");
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
