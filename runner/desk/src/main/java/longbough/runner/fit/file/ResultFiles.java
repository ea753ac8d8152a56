package longbough.runner.fit.file;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longbough.runner.fit.FitResult;
import longbough.runner.fit.Fitted;
import longbough.runner.fit.Influence;
import longbough.runner.fit.Loss;
import longbough.runner.table.NumberText;
import longbough.runner.validate.Standing;
import longbough.runner.validate.experiment.Finding;
import longbough.shared.source.ParameterReader;
import longbough.shared.source.Sourced;

/** The tables of a fit and its report, in one folder. */
public final class ResultFiles {
  public static final String REPORT = "report.md";
  public static final String FITTED = "fitted.csv";
  static final List<String> FITTED_HEADER =
      List.of("name", "before", "after", "unit", "low", "high", "gain", "checks");

  private ResultFiles() {}

  /** Writes all files of a fit. */
  public static void write(Path folder, FitResult result, String version, String date)
      throws IOException {
    table(folder.resolve("screening.csv"), screening(result));
    table(folder.resolve("checks.csv"), checks(result));
    table(folder.resolve(FITTED), fitted(result));
    table(folder.resolve("parameter-rows.csv"), rows(result, date));
    Files.writeString(
        folder.resolve(REPORT), FitReport.of(result, version, date), StandardCharsets.UTF_8);
  }

  private static List<List<String>> screening(FitResult result) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("name", "value", "low", "high", "loss", "loss_low", "loss_high", "stir", "checks"));
    for (Influence influence : result.influences()) {
      Sourced row = influence.parameter().row();
      rows.add(
          List.of(
              row.name(),
              NumberText.of(row.value()),
              NumberText.of(row.range().low()),
              NumberText.of(row.range().high()),
              number(influence.start()),
              number(influence.low()),
              number(influence.high()),
              number(influence.stir()),
              String.join(" ", influence.checks())));
    }
    return rows;
  }

  private static List<List<String>> fitted(FitResult result) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(FITTED_HEADER);
    for (Fitted fitted : result.fitted()) {
      Sourced row = fitted.parameter().row();
      rows.add(
          List.of(
              row.name(),
              NumberText.of(fitted.before()),
              NumberText.of(fitted.after()),
              row.unit(),
              NumberText.of(row.range().low()),
              NumberText.of(row.range().high()),
              number(fitted.gain()),
              String.join(" ", fitted.checks())));
    }
    return rows;
  }

  private static List<List<String>> rows(FitResult result, String date) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ParameterReader.HEADER);
    for (Fitted fitted : result.fitted()) {
      rows.add(RowText.fields(fitted, written(fitted.parameter().row()), date));
    }
    return rows;
  }

  private static Map<String, String> written(Sourced row) {
    return Map.of(
        "value", NumberText.of(row.value()),
        "unit", row.unit(),
        "low", NumberText.of(row.range().low()),
        "high", NumberText.of(row.range().high()),
        "sampled", row.sampled() ? "yes" : "no",
        "basis", row.basis().label(),
        "source", row.citation(),
        "note", row.note());
  }

  private static List<List<String>> checks(FitResult result) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "check",
            "process",
            "part",
            "standing_before",
            "standing_after",
            "loss_before",
            "loss_after",
            "got_before",
            "got_after"));
    result
        .checks()
        .forEach(
            (id, check) -> {
              Finding before = result.before().get(id);
              Finding after = result.after().get(id);
              if (before != null && after != null) {
                rows.add(
                    List.of(
                        id,
                        check.process(),
                        part(result, id),
                        Standing.of(before).label(),
                        Standing.of(after).label(),
                        number(Loss.of(before)),
                        number(Loss.of(after)),
                        before.got(),
                        after.got()));
              }
            });
    return rows;
  }

  static String part(FitResult result, String check) {
    if (result.plan().keptApart().contains(check)) {
      return "kept apart";
    }
    return result.plan().training().contains(check) ? "training" : "not used";
  }

  static String number(double value) {
    return NumberText.of(Math.rint(value * 1e4) / 1e4);
  }

  private static void table(Path file, List<List<String>> rows) throws IOException {
    try (CsvWriter writer =
        CsvWriter.builder()
            .lineDelimiter(LineDelimiter.LF)
            .build(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
      rows.forEach(writer::writeRecord);
    }
  }
}
