package longbough.runner.yaml;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import longbough.shared.quantity.Range;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Single values: each reading is empty where the node isn't such a value within its limits. */
final class Scalars {

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d+)?");

  private Scalars() {}

  static Optional<Double> number(Node node, Range range) {
    return anyNumber(node).filter(range::contains);
  }

  static Optional<Long> whole(Node node, Range range) {
    return number(node, range).filter(value -> value == Math.rint(value)).map(Double::longValue);
  }

  static Optional<String> text(Node node, Range length) {
    return string(node)
        .map(text -> text.replaceAll("\\R", " ").strip())
        .filter(
            text ->
                length.contains(text.length()) && text.codePoints().noneMatch(Scalars::invisible))
        .filter(text -> length.low() == 0 || !text.isBlank());
  }

  static Optional<String> word(Node node, List<String> words) {
    return string(node).filter(words::contains);
  }

  static Optional<Boolean> flag(Node node) {
    return node instanceof ScalarNode scalar && node.getTag().equals(Tag.BOOL)
        ? Optional.of(scalar.getValue().equalsIgnoreCase("true"))
        : Optional.empty();
  }

  static boolean isText(ScalarNode node) {
    return node.getTag().equals(Tag.STR);
  }

  /** What stands there, for a message. */
  static String describe(Node node) {
    if (!(node instanceof ScalarNode scalar)) {
      return node instanceof MappingNode ? "a block of keys" : "a list of " + items(node);
    }
    if (scalar.getTag().equals(Tag.NULL)) {
      return "nothing";
    }
    return isText(scalar) ? Mistakes.quoted(scalar.getValue()) : unquoted(scalar.getValue());
  }

  /** Advice for a usual slip, if this is one. */
  static Optional<String> hint(Node node, KeyRow row) {
    if (!(node instanceof ScalarNode scalar)) {
      return Optional.empty();
    }
    String value = scalar.getValue();
    boolean wantsNumber = row.kinds().contains("number") || row.kinds().contains("whole");
    if (isText(scalar) && wantsNumber && NUMBER.matcher(value).matches()) {
      return Optional.of("remove the quotes");
    }
    if (isText(scalar) && wantsNumber && NUMBER.matcher(value.replace(',', '.')).matches()) {
      return Optional.of("write a decimal point, not a comma");
    }
    if (!isText(scalar) && row.kinds().contains("text") && !scalar.getTag().equals(Tag.NULL)) {
      return Optional.of("put the text between quotes");
    }
    if (isText(scalar) && row.kinds().contains("word")) {
      return Optional.of(
          "did you mean '"
              + Nearest.of(value, row.words())
              + "'? "
              + row.key()
              + ": "
              + row.meaning());
    }
    return Optional.empty();
  }

  private static Optional<Double> anyNumber(Node node) {
    boolean number = node.getTag().equals(Tag.INT) || node.getTag().equals(Tag.FLOAT);
    if (!number
        || !(node instanceof ScalarNode scalar)
        || !NUMBER.matcher(scalar.getValue()).matches()) {
      return Optional.empty();
    }
    return Optional.of(Double.parseDouble(scalar.getValue()));
  }

  private static Optional<String> string(Node node) {
    return node instanceof ScalarNode scalar && isText(scalar)
        ? Optional.of(scalar.getValue())
        : Optional.empty();
  }

  private static int items(Node node) {
    return ((org.snakeyaml.engine.v2.nodes.SequenceNode) node).getValue().size();
  }

  private static String unquoted(String text) {
    String quoted = Mistakes.quoted(text);
    return quoted.substring(1, quoted.length() - 1);
  }

  /** Characters that could steer a terminal, a page or a spreadsheet, line ends among them. */
  private static boolean invisible(int point) {
    int type = Character.getType(point);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }
}
