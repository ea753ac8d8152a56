package longbough.runner.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Reads a text file that was not written by us: within limits, and only if it is text. */
public final class SafeText {

  /** A written scenario takes a few kilobytes; an inventory of every limb some tens of them. */
  static final int MOST_BYTES = 1_000_000;

  static final int LONGEST_LINE = 2_000;

  private SafeText() {}

  /** The text of a file, or the exception that says why there is none. */
  public static String read(Path file, Mistakes mistakes) {
    return decode(bytes(file, mistakes), mistakes);
  }

  /** Refuses lines that no person writes; scanners may take quadratic time over them. */
  public static void checkLines(String text, Mistakes mistakes) {
    int number = 1;
    int start = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || text.charAt(i) == '\n') {
        if (i - start > LONGEST_LINE) {
          throw mistakes.fatal(
              new Place(number, LONGEST_LINE + 1),
              "a line of " + (i - start) + " characters",
              "lines of up to " + LONGEST_LINE,
              "break the line, or check that this is the file you meant");
        }
        number++;
        start = i + 1;
      }
    }
  }

  private static byte[] bytes(Path file, Mistakes mistakes) {
    try {
      if (!Files.exists(file)) {
        throw mistakes.fatal(
            Place.NONE, "no such file", "a file that is there", "check the name and the folder");
      }
      if (Files.isDirectory(file)) {
        throw mistakes.fatal(Place.NONE, "a folder", "a file", "name one file in it");
      }
      if (!Files.isRegularFile(file)) {
        throw mistakes.fatal(Place.NONE, "a device or pipe", "a file", "save it to a file first");
      }
      long size = Files.size(file);
      if (size > MOST_BYTES) {
        throw tooBig(size, mistakes);
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
          throw tooBig(bytes.length, mistakes);
        }
        return bytes;
      }
    } catch (IOException | SecurityException | InvalidPathException e) {
      throw mistakes.fatal(
          Place.NONE,
          "a file that cannot be read (" + e.getClass().getSimpleName() + ")",
          "a readable file",
          "check its permissions");
    }
  }

  private static RuntimeException tooBig(long size, Mistakes mistakes) {
    return mistakes.fatal(
        Place.NONE,
        "a file of " + size + " bytes",
        "up to " + MOST_BYTES + " bytes",
        "check that this is the file you meant; a scenario takes a few thousand");
  }

  private static String decode(byte[] bytes, Mistakes mistakes) {
    Utf8 read = Utf8.of(bytes);
    if (read.text() == null) {
      throw mistakes.fatal(
          new Place(read.badLine(), 0),
          "bytes that are not UTF-8 text",
          "UTF-8 text",
          "save the file as UTF-8");
    }
    return read.text();
  }
}
