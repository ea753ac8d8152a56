package longbough.runner.client.words;

import static java.util.stream.Collectors.toSet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import longbough.runner.client.words.MessageLines.Entry;
import longbough.runner.yaml.Mistakes;
import longbough.runner.yaml.Nearest;
import longbough.runner.yaml.SafeText;

/** Every sentence of the client report by its key, in one language. */
public final class Messages {
  private static final String FILE = "messages.properties";
  private static final Pattern CHOICE = Pattern.compile("\\{(\\d+),choice");

  private final Map<String, Entry> entries;

  private Messages(Map<String, Entry> entries) {
    this.entries = entries;
  }

  /** The language that comes with the program. */
  public static Messages english() {
    Mistakes mistakes = new Mistakes(FILE);
    Map<String, Entry> entries = MessageLines.read(shipped(), mistakes);
    mistakes.throwIfAny();
    return new Messages(entries);
  }

  /**
   * English with the lines of a file in place of its own; every mistake in the file is reported
   * together.
   */
  public static Messages in(Path file) {
    Messages english = english();
    Mistakes mistakes = new Mistakes(file.toString());
    String text = SafeText.read(file, mistakes);
    SafeText.checkLines(text, mistakes);
    Map<String, Entry> all = new LinkedHashMap<>(english.entries);
    Map<String, Entry> own = MessageLines.read(text, mistakes);
    own.forEach((key, entry) -> english.check(key, entry, mistakes));
    mistakes.throwIfAny();
    all.putAll(own);
    return new Messages(all);
  }

  /** The sentence with its gaps filled. */
  public String say(String key, Object... parts) {
    Entry entry = entries.get(key);
    if (entry == null) {
      throw new IllegalArgumentException("no message '" + key + "'");
    }
    // Formats are not safe to share between threads, though their patterns are.
    return ((MessageFormat) entry.format().clone()).format(parts);
  }

  /** Every key there is. */
  public Set<String> keys() {
    return Set.copyOf(entries.keySet());
  }

  private void check(String key, Entry entry, Mistakes mistakes) {
    Entry english = entries.get(key);
    if (english == null) {
      List<String> known = List.copyOf(entries.keySet());
      String nearest = Nearest.of(key, known);
      mistakes.add(
          entry.place(),
          key,
          "a key that no sentence has",
          "the keys of the English file",
          Nearest.plausible(key, nearest)
              ? "did you mean '" + nearest + "'? Otherwise remove the line"
              : "remove the line");
    } else if (gaps(entry) > gaps(english)) {
      mistakes.add(
          entry.place(),
          key,
          "the gap {" + (gaps(entry) - 1) + "}",
          gaps(english) == 0 ? "no gap" : "gaps up to {" + (gaps(english) - 1) + "}",
          "the English text is: " + english.text());
    } else if (choices(entry).stream().anyMatch(gap -> !choices(english).contains(gap))) {
      mistakes.add(
          entry.place(),
          key,
          "a choice where the gap is text",
          "a choice only where the English text has one",
          "the English text is: " + english.text());
    }
  }

  private static Set<String> choices(Entry entry) {
    return CHOICE.matcher(entry.text()).results().map(found -> found.group(1)).collect(toSet());
  }

  private static int gaps(Entry entry) {
    return entry.format().getFormatsByArgumentIndex().length;
  }

  private static String shipped() {
    try (InputStream in = Messages.class.getResourceAsStream(FILE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
