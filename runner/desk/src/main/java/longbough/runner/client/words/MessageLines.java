package longbough.runner.client.words;

import java.text.MessageFormat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.Place;

/**
 * A file of messages: lines {@code key = text}, blank lines and lines that start with {@code #}.
 * The text is a {@link MessageFormat} pattern, so an apostrophe in it is written twice.
 */
final class MessageLines {
  static final int LONGEST = 1_500;

  private static final Pattern KEY = Pattern.compile("[a-z0-9_.]+");

  /** The start of a gap that is anything but {3} or {3,choice,...}. */
  private static final Pattern ODD_GAP = Pattern.compile("\\{(?!\\d{1,2}(\\}|,choice,))");

  /** One message and where it stands. */
  record Entry(String text, MessageFormat format, Place place) {}

  private MessageLines() {}

  /** Every usable message by key; whatever is wrong has been noted. */
  static Map<String, Entry> read(String text, Mistakes mistakes) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    int number = 0;
    for (String line : text.split("\n", -1)) {
      number++;
      String content = line.strip();
      if (!content.isEmpty() && !content.startsWith("#")) {
        entry(content, new Place(number, 1), entries, mistakes);
      }
    }
    return entries;
  }

  private static void entry(
      String line, Place place, Map<String, Entry> entries, Mistakes mistakes) {
    int equals = line.indexOf('=');
    String key = equals < 0 ? "" : line.substring(0, equals).strip();
    if (!KEY.matcher(key).matches()) {
      mistakes.add(
          place, "", Mistakes.quoted(line), "key = text", "start a remark with # or write a key");
      return;
    }
    String text = line.substring(equals + 1).strip();
    if (text.isEmpty() || text.length() > LONGEST || text.chars().anyMatch(c -> c < ' ')) {
      mistakes.add(
          place,
          key,
          text.isEmpty() ? "nothing" : "a text of " + text.length() + " characters",
          "text of 1 to " + LONGEST + " characters without control characters",
          "write the sentence, or leave the line out: then the English one is taken");
      return;
    }
    try {
      if (ODD_GAP.matcher(text).find()) {
        throw new IllegalArgumentException("a gap of another kind");
      }
      MessageFormat format = new MessageFormat(text, Locale.ROOT);
      if (entries.putIfAbsent(key, new Entry(text, format, place)) != null) {
        mistakes.add(place, key, "this key a second time", "each key once", "remove one line");
      }
    } catch (IllegalArgumentException damaged) {
      mistakes.add(
          place,
          key,
          "a pattern that can't be read: " + Mistakes.quoted(text),
          "text with {0}, {1} or {0,choice,...} where the English text has them",
          "close every brace, and write an apostrophe twice");
    }
  }
}
