package longbough.model.odd;

/** Javadoc turned into Markdown. */
final class JavadocText {

  private JavadocText() {}

  static String markdown(String javadoc) {
    String[] parts = stripped(javadoc).split("<pre>|</pre>", -1);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < parts.length; i++) {
      // Every second part stands between <pre> and </pre>.
      out.append(i % 2 == 0 ? prose(parts[i]) : fenced(parts[i]));
    }
    return out.toString().replaceAll("\n{3,}", "\n\n").strip();
  }

  /** All of it in one line, for a table. */
  static String line(String javadoc) {
    return prose(stripped(javadoc)).replaceAll("\\s+", " ").strip();
  }

  private static String stripped(String javadoc) {
    return javadoc
        .replaceAll("(?m)^\\s*\\* ?", "")
        .replaceAll("(?s)\\n@param .*", "")
        .replaceAll("\\{@(?:link|code)\\s+#?(?:[\\w.]+\\.)?([^}]*)}", "$1")
        .replaceAll("(?<=\\w)#(?=\\w)", ".");
  }

  private static String prose(String text) {
    return text.replaceAll("([*_|\\[\\]])", "\\\\$1")
        .replaceAll("\\s*<p>\\s*", "\n\n")
        .replace("<", "\\<");
  }

  private static String fenced(String text) {
    return "\n\n```text\n" + text.strip() + "\n```\n\n";
  }
}
