package longbough.runner.table;

import java.util.List;
import java.util.stream.Collectors;

/** The little JSON that the manifest needs. */
final class Json {

  private Json() {}

  static String text(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (char c : text.toCharArray()) {
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        default -> {
          if (c < ' ' || c == 0x7f || Character.isSurrogate(c) || c == 0x2028 || c == 0x2029) {
            out.append("\\u").append(String.format("%04x", (int) c));
          } else {
            out.append(c);
          }
        }
      }
    }
    return out.append('"').toString();
  }

  static String list(List<String> texts, String indent) {
    if (texts.isEmpty()) {
      return "[]";
    }
    return texts.stream()
        .map(text -> indent + "  " + text(text))
        .collect(Collectors.joining(",\n", "[\n", "\n" + indent + "]"));
  }
}
