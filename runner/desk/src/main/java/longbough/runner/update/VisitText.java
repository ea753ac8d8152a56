package longbough.runner.update;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longbough.runner.table.Fingerprint;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/**
 * Reads a visit file that was not written by us: within limits, and only if it is comma-separated
 * text.
 *
 * @param rows its rows that are neither empty nor a remark
 * @param sha256 fingerprint of its bytes
 */
record VisitText(List<Row> rows, String sha256) {
  private static final int MOST_BYTES = 200_000;
  private static final int MOST_ROWS = 500;
  private static final int MOST_CELL = 200;

  /** One row, with the line it starts on. */
  record Row(int line, List<String> cells) {}

  static VisitText read(Path file) {
    byte[] bytes = bytes(file);
    String text = decoded(file, bytes);
    List<Row> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .skipEmptyLines(true)
            .commentStrategy(CommentStrategy.SKIP)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .allowUnclosedQuote(false)
            .ofCsvRecord(text)) {
      for (CsvRecord row : reader) {
        int line = (int) row.getStartingLineNumber();
        if (rows.size() > MOST_ROWS) {
          throw wrong(file, line, "more rows", "up to " + MOST_ROWS + " rows", "keep one tree's");
        }
        if (row.getFields().stream().anyMatch(cell -> cell.length() > MOST_CELL)) {
          String allowed = "cells of up to " + MOST_CELL + " letters";
          throw wrong(
              file, line, "a longer cell", allowed, "check that this is the file you meant");
        }
        rows.add(new Row(line, row.getFields().stream().map(String::strip).toList()));
      }
    } catch (CsvParseException e) {
      throw wrong(file, 0, "text that is not comma-separated", "", "check the quotes");
    } catch (IOException e) {
      throw unreadable(file);
    }
    return new VisitText(List.copyOf(rows), Fingerprint.of(bytes));
  }

  private static byte[] bytes(Path file) {
    if (!Files.isRegularFile(file)) {
      String found = Files.isDirectory(file) ? "a folder" : "no such file";
      throw wrong(file, 0, found, "a CSV file of measured figures", "check --measured");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        String allowed = "up to " + MOST_BYTES + " bytes";
        throw wrong(file, 0, "a larger file", allowed, "check that this is the file you meant");
      }
      return bytes;
    } catch (IOException | SecurityException e) {
      throw unreadable(file);
    }
  }

  private static String decoded(Path file, byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw wrong(file, 0, "bytes that are not UTF-8 text", "UTF-8 text", "save it as UTF-8");
    }
  }

  private static InputException unreadable(Path file) {
    return wrong(file, 0, "a file that cannot be read", "a readable file", "check its permissions");
  }

  private static InputException wrong(
      Path file, int line, String found, String allowed, String mend) {
    return new InputException(
        List.of(new Problem(file.toString(), line, 0, "", found, allowed, mend)));
  }
}
