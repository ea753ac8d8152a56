package longbough.runner.client.page;

/** The rules of a sheet that hold words: the running head and the number of the page. */
final class PaperStyle {

  private static final String LOOK =
      "; font-family: \"Open Sans\"; font-size: 7.5pt; color: #46504b } ";

  private PaperStyle() {}

  static String of(ClientInput input) {
    String head =
        input.client().reference().isEmpty()
            ? input.say("running.head", input.title())
            : input.say("running.head_reference", input.title(), input.client().reference());
    // Private characters stand for the counters until the words are in quotes.
    String number = quoted(input.say("running.page", "\uE000", "\uE001"));
    number =
        number.replace("\uE000", "\" counter(page) \"").replace("\uE001", "\" counter(pages) \"");
    return "@page { @top-left { width: 100%; text-align: left; content: "
        + quoted(head)
        + LOOK
        + "@bottom-left { width: 75%; text-align: left; content: "
        + quoted(input.say("running.foot"))
        + LOOK
        + "@bottom-right { width: 25%; text-align: right; content: "
        + number
        + LOOK
        + "}\n@page :first { @top-left { content: none } }\n";
  }

  /** A text as a string of a style sheet; only letters, digits and spaces stand as they are. */
  static String quoted(String text) {
    StringBuilder safe = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            point -> {
              if (Character.isLetterOrDigit(point)
                  || point == ' '
                  || point >= 0xE000 && point <= 0xE001) {
                safe.appendCodePoint(point);
              } else {
                safe.append(String.format("\\%06x ", point));
              }
            });
    return safe.append('"').toString();
  }
}
