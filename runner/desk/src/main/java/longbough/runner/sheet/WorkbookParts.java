package longbough.runner.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * The files inside a workbook, unpacked in memory within bounds, whatever the archive says of their
 * sizes. Entries are read in the order of the archive and only once, so that overlapping entries
 * gain nothing.
 */
final class WorkbookParts {
  private final Map<String, byte[]> parts = new HashMap<>();

  private WorkbookParts() {}

  static WorkbookParts unpack(String place, byte[] archive) {
    WorkbookParts parts = new WorkbookParts();
    int left = SheetLimits.UNPACKED_BYTES;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        byte[] bytes = zip.readNBytes(left + 1);
        left -= bytes.length;
        if (left < 0) {
          throw SheetFaults.fatal(
              place,
              0,
              "a workbook that unpacks to more than " + SheetLimits.UNPACKED_BYTES + " bytes",
              "up to " + SheetLimits.UNPACKED_BYTES,
              "take pictures and other sheets out, or check that this is the file you meant");
        }
        if (parts.parts.size() >= SheetLimits.PARTS) {
          throw SheetFaults.fatal(
              place,
              0,
              "a workbook of more than " + SheetLimits.PARTS + " parts",
              "",
              "copy the tables into a new workbook");
        }
        // The first of a name counts; a second one is not what other readers would show.
        parts.parts.putIfAbsent(entry.getName().replaceFirst("^/", ""), bytes);
      }
      return parts;
    } catch (IOException | IllegalArgumentException broken) {
      throw broken(place);
    }
  }

  private static RuntimeException broken(String place) {
    return SheetFaults.fatal(
        place, 0, "a broken workbook", "XLSX or CSV", "save it again, or save it as CSV UTF-8");
  }

  /** A part's bytes, or null. */
  byte[] get(String name) {
    return parts.get(name);
  }
}
