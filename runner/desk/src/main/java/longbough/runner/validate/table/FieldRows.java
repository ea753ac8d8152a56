package longbough.runner.validate.table;

import java.util.List;
import longbough.runner.table.TidyFile;
import longbough.runner.validate.field.FieldReport;
import longbough.runner.validate.field.LogParabola;
import longbough.runner.validate.field.RelationTrial;
import longbough.runner.validate.field.SpeciesTrial;
import longbough.runner.validate.field.Spread;
import longbough.runner.validate.field.SpreadTrial;

/** The rows of the files about open measurements. */
final class FieldRows {
  static final List<String> SIZE_COLUMNS =
      List.of(
          "species",
          "quantity",
          "cities",
          "climate",
          "measured",
          "x_from",
          "x_to",
          "residual_sd_ln",
          "model_points",
          "share_in_50",
          "share_in_95",
          "bias_ln",
          "alive_at_end");
  static final List<String> LEAF_COLUMNS = List.of("species", "trees", "r2_ln", "bias_ln");
  static final List<String> SPREAD_COLUMNS =
      List.of(
          "quantity",
          "unit",
          "group",
          "note",
          "measured",
          "p05",
          "p25",
          "p50",
          "p75",
          "p95",
          "model",
          "source");

  private FieldRows() {}

  static void sizes(TidyFile file, FieldReport field) {
    for (SpeciesTrial trial : field.species()) {
      for (RelationTrial relation : trial.relations()) {
        LogParabola fit = relation.fit();
        file.add(trial.species().id())
            .add(relation.relation().word())
            .add(String.join("; ", trial.cities()))
            .add(trial.grown().climate())
            .add(fit.n())
            .add(fit.least())
            .add(fit.most())
            .add(fit.residualSd())
            .add(relation.points())
            .add(relation.share50())
            .add(relation.share95())
            .add(relation.lnBias())
            .add(trial.grown().survival())
            .endRow();
      }
    }
  }

  static void leaf(TidyFile file, FieldReport field) {
    for (SpeciesTrial trial : field.species()) {
      file.add(trial.species().id())
          .add(trial.hidden().n())
          .add(trial.hidden().r2())
          .add(trial.hidden().lnBias())
          .endRow();
    }
  }

  static void spreads(TidyFile file, FieldReport field) {
    for (SpreadTrial trial : field.spreads()) {
      for (Spread group : trial.groups()) {
        file.add(trial.title()).add(trial.unit()).add(group.name()).add(group.note());
        file.add(group.n());
        for (double point : group.points()) {
          file.add(point);
        }
        file.add(group.model()).add(trial.source()).endRow();
      }
    }
  }
}
