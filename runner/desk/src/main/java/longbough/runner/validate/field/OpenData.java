package longbough.runner.validate.field;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.source.DataFile;
import longbough.shared.source.DataRow;

/**
 * The folder of open measurements. They are not part of the project, so everything works without
 * them; what is there is not trusted until it is read.
 *
 * @param folder where the files are
 */
public record OpenData(Path folder) {
  public static final String STREET_TREES = "urban-trees.csv";
  private static final String PROPERTY = "longbough.data";

  /** The largest of the files is far smaller; something else was put there by mistake. */
  private static final long MOST_BYTES = 64L << 20;

  /**
   * The folder that {@code -Dlongbough.data} names, else a folder {@code shared/data} beside or
   * above the place of work, or beside the checkout from which the program runs.
   */
  public static Optional<OpenData> find() {
    String named = System.getProperty(PROPERTY);
    Stream<Path> places =
        named != null
            ? Stream.of(Path.of(named))
            : Stream.concat(above(Path.of("").toAbsolutePath()), above(program()))
                .map(at -> at.resolve("shared").resolve("data"));
    return places
        .filter(place -> Files.isRegularFile(place.resolve(STREET_TREES)))
        .findFirst()
        .map(OpenData::new);
  }

  /** The folder that the user named, which must be one. */
  public static OpenData named(Path folder, String option) {
    if (!Files.isDirectory(folder)) {
      throw problem(
          folder.toString(),
          option,
          Files.exists(folder) ? "a file" : "no such folder",
          "a folder with files such as " + STREET_TREES,
          "name the folder of open measurements with " + option);
    }
    return new OpenData(folder);
  }

  public boolean has(String file) {
    return Files.isRegularFile(folder.resolve(file));
  }

  /** The rows of one file, whose header must be the given one. */
  public List<DataRow> rows(String file, List<String> header) {
    Path path = folder.resolve(file);
    try {
      if (Files.size(path) > MOST_BYTES) {
        throw problem(
            path.toString(), "", "a file of more than 64 MB", "at most 64 MB", "see its origin");
      }
      return DataFile.parse(
          path.toString(), Files.readString(path, StandardCharsets.UTF_8), header);
    } catch (CharacterCodingException e) {
      throw problem(path.toString(), "", "text that is not UTF-8", "UTF-8", "save it as UTF-8");
    } catch (IOException e) {
      throw problem(path.toString(), "", "a file that cannot be read", "", "check who may read it");
    }
  }

  /** A quantity that can't be negative; NaN where it was not measured. */
  static double measured(DataRow row, String column) {
    if (row.blank(column)) {
      return Double.NaN;
    }
    double value = row.number(column);
    if (value < 0) {
      throw row.wrong(
          column, row.text(column), "0 or more, or nothing", "leave out what was not measured");
    }
    return value;
  }

  private static Stream<Path> above(Path at) {
    return at == null ? Stream.empty() : Stream.iterate(at, p -> p != null, Path::getParent);
  }

  private static Path program() {
    try {
      return Path.of(OpenData.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (java.net.URISyntaxException | RuntimeException e) {
      return null;
    }
  }

  private static InputException problem(
      String file, String field, String found, String allowed, String mend) {
    return new InputException(List.of(new Problem(file, 0, 0, field, found, allowed, mend)));
  }
}
