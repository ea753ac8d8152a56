package longbough.runner.validate.table;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import longbough.runner.table.TidyFile;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Finding;
import longbough.runner.validate.field.FieldReport;

/** The text of each file by its name; a file whose part was left out holds its header only. */
public final class ValidationFiles {
  public static final String CHECKS = "checks.csv";
  public static final String SIZES = "open-data-sizes.csv";
  public static final String LEAF = "open-data-hidden-leaf.csv";
  public static final String SPREADS = "open-data-spreads.csv";
  public static final List<String> NAMES = List.of(CHECKS, SIZES, LEAF, SPREADS);

  private static final List<String> CHECK_COLUMNS =
      List.of(
          "id",
          "process",
          "subject",
          "treatment",
          "quantity",
          "unit",
          "published",
          "expected",
          "got",
          "verdict",
          "why",
          "direction",
          "set_up",
          "basis",
          "source",
          "used_in_fitting");

  private ValidationFiles() {}

  public static Map<String, String> of(List<ValidationRow> rows, FieldReport field) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(CHECKS, text(CHECK_COLUMNS, file -> rows.forEach(row -> check(file, row))));
    files.put(SIZES, text(FieldRows.SIZE_COLUMNS, file -> FieldRows.sizes(file, field)));
    files.put(LEAF, text(FieldRows.LEAF_COLUMNS, file -> FieldRows.leaf(file, field)));
    files.put(SPREADS, text(FieldRows.SPREAD_COLUMNS, file -> FieldRows.spreads(file, field)));
    return files;
  }

  private static void check(TidyFile file, ValidationRow row) {
    Check check = row.check();
    Finding finding = row.finding();
    file.add(check.id())
        .add(check.process())
        .add(check.subject())
        .add(check.treatment())
        .add(check.quantity())
        .add(check.unit())
        .add(check.published())
        .add(finding == null ? "" : finding.expected())
        .add(finding == null ? "" : finding.got())
        .add(row.standing().label())
        .add(row.why())
        .add(check.direction())
        .add(finding == null ? "" : finding.setUp())
        .add(check.basis())
        .add(check.source())
        .add(row.own() ? "never" : "may be")
        .endRow();
  }

  private static String text(List<String> columns, Consumer<TidyFile> rows) {
    StringWriter to = new StringWriter();
    try (TidyFile file = new TidyFile(to, columns)) {
      rows.accept(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return to.toString();
  }
}
