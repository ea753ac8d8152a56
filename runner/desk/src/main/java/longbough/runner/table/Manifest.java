package longbough.runner.table;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import longbough.runner.compare.Comparison;
import longbough.runner.compare.RegimeResult;

/** {@code manifest.json}: what made this folder, and the mark by which we know it for ours. */
public final class Manifest {
  public static final String FILE = "manifest.json";

  /** First line of every manifest after the brace. */
  private static final String MARK = "\"written_by\": \"longbough\"";

  private static final int HEAD_CHARS = 200;

  private Manifest() {}

  public static void write(Comparison comparison, Provenance provenance, Path folder)
      throws IOException {
    String text =
        """
        {
          %s,
          "version": %s,
          "scenario": %s,
          "scenario_hash": %s,
          "parameter_hash": %s,
          "seed": %d,
          "members": %d,
          "years": %d,
          "regimes": %s,
          "wall_seconds": %s,
          "warnings": %s
        }
        """
            .formatted(
                MARK,
                Json.text(provenance.version()),
                Json.text(provenance.scenario()),
                Json.text(provenance.scenarioHash()),
                Json.text(provenance.parameterHash()),
                comparison.input().seed(),
                comparison.members(),
                comparison.years(),
                Json.list(comparison.regimes().stream().map(RegimeResult::name).toList(), "  "),
                NumberText.of(Math.rint(comparison.wallSeconds() * 1000) / 1000),
                Json.list(provenance.warnings(), "  "));
    Files.writeString(folder.resolve(FILE), text, StandardCharsets.UTF_8);
  }

  /**
   * The manifest of what is no comparison.
   *
   * @param fields by name, in their order: text, whole numbers or lists of text
   */
  public static void write(Map<String, Object> fields, Path folder) throws IOException {
    StringBuilder text = new StringBuilder("{\n  ").append(MARK);
    fields.forEach(
        (name, value) ->
            text.append(",\n  ").append(Json.text(name)).append(": ").append(json(value)));
    String whole = text.append("\n}\n").toString();
    Files.writeString(folder.resolve(FILE), whole, StandardCharsets.UTF_8);
  }

  private static String json(Object value) {
    if (value instanceof List<?> list) {
      return Json.list(list.stream().map(String::valueOf).toList(), "  ");
    }
    return value instanceof Number ? value.toString() : Json.text(value.toString());
  }

  /** Whether the folder holds a manifest of ours. */
  static boolean in(Path folder) {
    Path file = folder.resolve(FILE);
    if (!Files.isRegularFile(file)) {
      return false;
    }
    char[] head = new char[HEAD_CHARS];
    try (var reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      int read = reader.read(head);
      return read > 0 && new String(head, 0, read).contains(MARK);
    } catch (IOException e) {
      return false;
    }
  }
}
