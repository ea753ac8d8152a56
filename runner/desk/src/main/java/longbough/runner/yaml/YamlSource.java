package longbough.runner.yaml;

import java.nio.file.Path;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * A YAML text as a tree of nodes that know their place.
 *
 * @param text the text as read
 * @param root its outermost node
 */
public record YamlSource(String text, Node root) {

  /** Reads a file; throws at once what leaves nothing to look at. */
  public static YamlSource read(Path file, Mistakes mistakes) {
    return parse(SafeText.read(file, mistakes), mistakes);
  }

  /** The nodes of a text that is within the limits of {@link SafeText}. */
  public static YamlSource parse(String text, Mistakes mistakes) {
    SafeText.checkLines(text, mistakes);
    LoadSettings settings =
        LoadSettings.builder()
            .setSchema(new CoreSchema())
            .setCodePointLimit(SafeText.MOST_BYTES)
            .setParseComments(false)
            .setAllowNonScalarKeys(true)
            .build();
    try {
      YamlGuard.check(text, settings, mistakes);
      Node root =
          new Compose(settings)
              .composeString(text)
              .orElseThrow(
                  () ->
                      mistakes.fatal(
                          Place.NONE,
                          "an empty file",
                          "keys with their values",
                          "start from one of the examples"));
      return new YamlSource(text, root);
    } catch (MarkedYamlEngineException e) {
      throw mistakes.fatal(
          Place.of(e.getProblemMark()),
          "text that YAML cannot read: " + oneLine(e.getProblem()),
          "",
          "check indentation (spaces only), colons, brackets and quotes up to here");
    } catch (YamlEngineException e) {
      throw mistakes.fatal(
          Place.NONE,
          "text that YAML cannot read: " + oneLine(e.getMessage()),
          "plain text",
          "remove control characters");
    }
  }

  private static String oneLine(String text) {
    String line = text == null ? "" : text.lines().findFirst().orElse("");
    return line.substring(0, Math.min(line.length(), 200));
  }
}
