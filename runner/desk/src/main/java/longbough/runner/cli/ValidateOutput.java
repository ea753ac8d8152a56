package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import longbough.runner.table.OutputFile;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.field.FieldReport;
import longbough.runner.validate.page.ValidationPage;
import longbough.runner.validate.table.ValidationFiles;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Option;

/** Where the validation is to be kept. */
final class ValidateOutput {
  private static final String TABLES = "--tables";

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Also write the table as a page with a picture per check.")
  private Path html;

  @Option(
      names = TABLES,
      paramLabel = "FOLDER",
      description = "Also write the checks and the open measurements as CSV files.")
  private Path tables;

  private OutputFile page;
  private final List<OutputFile> files = new ArrayList<>();

  boolean wanted() {
    return html != null || tables != null;
  }

  /** Before anything is played: nobody should wait for a page that cannot be kept. */
  void prepare() {
    page = html == null ? null : OutputFile.prepare(html, "--html");
    if (tables != null) {
      Path folder = folder();
      for (String name : ValidationFiles.NAMES) {
        files.add(OutputFile.prepare(folder.resolve(name), TABLES));
      }
    }
  }

  private Path folder() {
    if (tables.toString().isBlank() || (Files.exists(tables) && !Files.isDirectory(tables))) {
      throw refused(tables.toString().isBlank() ? "nothing" : "a file");
    }
    try {
      return Files.createDirectories(tables);
    } catch (IOException e) {
      throw refused("a place that cannot be written");
    }
  }

  private InputException refused(String found) {
    return new InputException(
        List.of(
            new Problem(
                tables.toString(),
                0,
                0,
                TABLES,
                found,
                "a folder, or a new name in an existing one",
                "name another folder with " + TABLES)));
  }

  void write(List<ValidationRow> rows, FieldReport field, PrintWriter out) throws IOException {
    if (page != null) {
      page.write(ValidationPage.of(rows, field, Version.text()));
      out.println();
      out.println("Page: " + PrintableText.of(page.path().toString()));
    }
    if (tables != null) {
      Map<String, String> texts = ValidationFiles.of(rows, field);
      for (OutputFile file : files) {
        file.write(texts.get(file.path().getFileName().toString()));
      }
      out.println();
      out.println("Tables: " + PrintableText.of(tables.toString()));
    }
  }
}
