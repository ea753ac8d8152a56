package longbough.model.odd;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a source file of the model says of itself: its Javadoc and its public fields. */
record SourceFile(String text) {
  private static final Pattern TYPE =
      Pattern.compile(
          "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:public )?(?:sealed )?(?:final |abstract )?"
              + "(?:class|record|interface|enum) ",
          Pattern.DOTALL);
  private static final Pattern FIELD =
      Pattern.compile(
          "(?:/\\*\\*((?:(?!\\*/).)*)\\*/\\s*)?\\n  public (?:final )?"
              + "\\w+(\\[\\])? (\\w+)(?: =[^;]*)?;",
          Pattern.DOTALL);

  private static final Map<String, String> UNITS =
      Map.of("M", "m", "M2", "m2", "KgC", "kg C", "Rad", "rad");
  private static final Pattern UNIT = Pattern.compile("(?<=[a-z])(M|M2|KgC|Rad)$");

  record Field(String name, boolean many, String says) {

    /** What its Javadoc says, else its name in words with the unit at its end. */
    String means() {
      if (!says.isEmpty()) {
        return says;
      }
      Matcher matcher = UNIT.matcher(name);
      String unit = matcher.find() ? UNITS.get(matcher.group()) : "";
      String words = matcher.replaceAll("").replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
      return words.substring(0, 1).toUpperCase(Locale.ROOT)
          + words.substring(1)
          + (unit.isEmpty() ? "." : ", " + unit + ".");
    }
  }

  static SourceFile of(String type) {
    try {
      Path file = Path.of("src/main/java", type.replace('.', '/') + ".java");
      return new SourceFile(Files.readString(file, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new IllegalStateException("no source of " + type, e);
    }
  }

  /** The Javadoc of the type as Markdown. */
  String says() {
    Matcher matcher = TYPE.matcher(text);
    if (!matcher.find()) {
      throw new IllegalStateException("a type without Javadoc");
    }
    return JavadocText.markdown(matcher.group(1));
  }

  List<Field> fields() {
    List<Field> fields = new ArrayList<>();
    Matcher matcher = FIELD.matcher(text);
    while (matcher.find()) {
      String says = matcher.group(1) == null ? "" : JavadocText.line(matcher.group(1));
      fields.add(new Field(matcher.group(3), matcher.group(2) != null, says));
    }
    return fields;
  }
}
