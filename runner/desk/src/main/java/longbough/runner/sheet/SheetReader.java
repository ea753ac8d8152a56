package longbough.runner.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import longbough.shared.problem.InputException;

/** START HERE for tables that people bring along: a file becomes sheets, or one clear mistake. */
public final class SheetReader {
  private static final List<String> TEXT = List.of(".csv", ".tsv", ".txt");
  private static final String WORKBOOK = ".xlsx";

  private SheetReader() {}

  /** Whether a file's name says that it is a table. */
  public static boolean isTable(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.endsWith(WORKBOOK) || TEXT.stream().anyMatch(name::endsWith);
  }

  /**
   * The tables in a file.
   *
   * @throws InputException with the one mistake that keeps the file from being read
   */
  public static List<Sheet> read(Path file) {
    String place = file.toString();
    byte[] bytes = bytes(file, place);
    boolean zip = bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K';
    if (zip) {
      return Workbook.sheets(place, bytes);
    }
    if (bytes.length > 1 && (bytes[0] & 0xFF) == 0xD0 && (bytes[1] & 0xFF) == 0xCF) {
      throw SheetFaults.fatal(
          place, 0, "an old or locked workbook", "XLSX or CSV", "save it again as .xlsx or .csv");
    }
    return List.of(CsvSheet.read(place, stem(file), bytes));
  }

  private static String stem(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private static byte[] bytes(Path file, String place) {
    try {
      if (!Files.exists(file)) {
        throw SheetFaults.fatal(
            place, 0, "no such file", "a CSV or XLSX file", "check the name and the folder");
      }
      if (!Files.isRegularFile(file)) {
        throw SheetFaults.fatal(
            place, 0, "no plain file", "a CSV or XLSX file", "name the files one by one");
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(SheetLimits.FILE_BYTES + 1);
        if (bytes.length > SheetLimits.FILE_BYTES) {
          throw SheetFaults.fatal(
              place,
              0,
              "a file of more than " + SheetLimits.FILE_BYTES + " bytes",
              "up to " + SheetLimits.FILE_BYTES + " bytes",
              "split it, or check that this is the file you meant");
        }
        return bytes;
      }
    } catch (IOException | SecurityException e) {
      throw SheetFaults.fatal(
          place,
          0,
          "a file that cannot be read (" + e.getClass().getSimpleName() + ")",
          "a readable file",
          "check its permissions");
    }
  }
}
