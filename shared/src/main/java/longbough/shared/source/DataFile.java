package longbough.shared.source;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/** Reads the project's own comma-separated data files and their indexes from the class path. */
public final class DataFile {

  private DataFile() {}

  /** The lines of an index file; blank lines and lines that start with {@code #} are skipped. */
  public static List<String> index(String resource) {
    return text(resource)
        .lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .toList();
  }

  /** The rows of a file on the class path, whose first line must be the given header. */
  public static List<DataRow> rows(String resource, List<String> header) {
    return parse(resource, text(resource), header);
  }

  /** The rows of a file's text, whose first line must be the given header. */
  public static List<DataRow> parse(String file, String text, List<String> header) {
    List<DataRow> rows = new ArrayList<>();
    boolean first = true;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .skipEmptyLines(true)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .allowUnclosedQuote(false)
            .ofCsvRecord(text)) {
      for (CsvRecord row : reader) {
        int line = (int) row.getStartingLineNumber();
        if (first) {
          requireHeader(file, line, row.getFields(), header);
          first = false;
        } else {
          rows.add(row(file, line, row.getFields(), header));
        }
      }
    } catch (CsvParseException e) {
      throw problem(
          file,
          0,
          "text that is not comma-separated values: " + e.getMessage(),
          "",
          "check the quotes");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (first) {
      throw problem(
          file, 1, "an empty file", String.join(",", header), "start the file with this header");
    }
    return rows;
  }

  private static void requireHeader(
      String file, int line, List<String> found, List<String> header) {
    if (!found.equals(header)) {
      throw problem(
          file,
          line,
          "header " + String.join(",", found),
          String.join(",", header),
          "use this header");
    }
  }

  private static DataRow row(String file, int line, List<String> found, List<String> header) {
    if (found.size() != header.size()) {
      throw problem(
          file,
          line,
          found.size() + " fields",
          header.size() + " fields",
          "put text that holds a comma between double quotes");
    }
    Map<String, String> fields = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      fields.put(header.get(i), found.get(i));
    }
    return new DataRow(file, line, fields);
  }

  private static InputException problem(
      String file, int line, String found, String allowed, String mend) {
    return new InputException(List.of(new Problem(file, line, 0, "", found, allowed, mend)));
  }

  private static String text(String resource) {
    try (InputStream in = DataFile.class.getClassLoader().getResourceAsStream(resource)) {
      if (in == null) {
        throw problem(resource, 0, "no such file", "", "an index names a file that is not there");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
