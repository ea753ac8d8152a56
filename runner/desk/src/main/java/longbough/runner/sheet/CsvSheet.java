package longbough.runner.sheet;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import longbough.runner.yaml.Utf8;

/**
 * A CSV file in UTF-8, with or without byte order mark, its cells separated by comma, semicolon or
 * tab: whichever the first line holds most of. A first line {@code sep=;} names it too.
 */
final class CsvSheet {
  private static final String SAYS = "sep=";
  private static final char[] SEPARATORS = {';', '\t', ','};

  private CsvSheet() {}

  static Sheet read(String place, String name, byte[] bytes) {
    String text = decode(place, bytes);
    char separator = separator(text);
    if (text.startsWith(SAYS)) {
      text = text.substring(Math.min(text.length(), firstLine(text).length()));
    }
    RowGatherer rows = new RowGatherer(place);
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .commentStrategy(CommentStrategy.SKIP)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .allowExtraCharsAfterClosingQuote(true)
            .allowUnclosedQuote(true)
            .ofCsvRecord(text)) {
      for (CsvRecord record : reader) {
        rows.add((int) record.getStartingLineNumber(), record.getFields());
      }
    } catch (CsvParseException | IOException e) {
      throw SheetFaults.fatal(
          place, 0, "text that cannot be read as CSV", "CSV", "save it again as CSV UTF-8");
    }
    return new Sheet(place, name, separator != ',', rows.rows());
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("");
  }

  private static char separator(String text) {
    String first = firstLine(text);
    if (first.startsWith(SAYS) && first.length() == SAYS.length() + 1) {
      return first.charAt(SAYS.length());
    }
    String heading =
        text.lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .findFirst()
            .orElse("");
    char best = ',';
    long most = 0;
    for (char candidate : SEPARATORS) {
      long count = heading.chars().filter(c -> c == candidate).count();
      if (count > most) {
        most = count;
        best = candidate;
      }
    }
    return best;
  }

  private static String decode(String place, byte[] bytes) {
    Utf8 read = Utf8.of(bytes);
    if (read.text() == null) {
      throw SheetFaults.fatal(
          place,
          read.badLine(),
          "bytes that are not UTF-8 text",
          "CSV in UTF-8, or XLSX",
          "save it again, as 'CSV UTF-8' or as a workbook");
    }
    return read.text();
  }
}
