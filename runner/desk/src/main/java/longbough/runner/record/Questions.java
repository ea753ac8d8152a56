package longbough.runner.record;

import java.util.List;
import java.util.Locale;
import longbough.runner.sheet.SheetFaults;
import longbough.runner.survey.Answer;
import longbough.runner.survey.Column;
import longbough.runner.survey.Columns;
import longbough.runner.survey.Kind;
import longbough.runner.survey.Unit;
import longbough.shared.trait.SpeciesLibrary;

/** Makes the questions, in the units of whoever is asked. */
final class Questions {
  private static final int LONGEST_NAME = 60;

  private final boolean us;

  Questions(boolean us) {
    this.us = us;
  }

  /** Which units; the first question of all. */
  static Question units() {
    String help = "m for metres and centimetres, ft for feet and inches";
    return new Question(
        "Units, m or ft",
        "m",
        false,
        help,
        reply ->
            List.of("m", "metric", "ft", "us").contains(reply.toLowerCase(Locale.ROOT))
                ? usable(reply)
                : wrong(reply, help));
  }

  static boolean us(String reply) {
    return List.of("ft", "us").contains(reply.toLowerCase(Locale.ROOT));
  }

  static Question name(String fallback) {
    String help = "a name or number of up to " + LONGEST_NAME + " characters";
    return new Question(
        "Name of the tree",
        fallback,
        false,
        help,
        reply ->
            reply.length() <= LONGEST_NAME ? usable(Answer.quoted(reply)) : wrong(reply, help));
  }

  static Question species() {
    return new Question(
        "Species",
        "",
        true,
        "the scientific or English name; 'longbough species' lists them",
        reply -> {
          if (SpeciesLibrary.load().find(reply).isPresent()) {
            return usable(Answer.quoted(reply));
          }
          List<String> nearest = SpeciesLibrary.load().nearest(reply, 3);
          return new Answer(
              "",
              SheetFaults.quoted(reply),
              "a species of the library",
              "nearest: " + String.join(", ", nearest));
        });
  }

  /** A question whose reply goes to a key of the scenario. */
  Question about(String words, String section, String key, String fallback, boolean needed) {
    Column column = Columns.of(section, key);
    Unit unit = unit(column);
    String asked = words + (unit == Unit.NONE ? "" : ", " + unit.word());
    String help = Answer.allowed(column, unit);
    return new Question(asked, fallback, needed, help, reply -> read(reply, column));
  }

  /** The trunk by diameter, or by girth where the reply begins with a g. */
  Question trunk() {
    Column diameter = Columns.of("tree", "trunk_diameter_cm");
    Column girth =
        Columns.of("trees").stream().filter(c -> c.kind() == Kind.GIRTH).findFirst().orElseThrow();
    Unit unit = unit(diameter);
    return new Question(
        "Trunk diameter at 1.3 m (g and a number: girth), " + unit.word(),
        "",
        true,
        Answer.allowed(diameter, unit) + ", or g and the girth",
        reply ->
            reply.matches("(?i)g.*")
                ? read(reply.replaceFirst("(?i)^g(irth)?", "").strip(), girth)
                : read(reply, diameter));
  }

  /** Reads a reply, which may name its unit. */
  Answer read(String reply, Column column) {
    Unit unit = unit(column);
    String number = reply;
    String tail = reply.replaceFirst("^[-+\\d.,\\s]*", "").strip().toLowerCase(Locale.ROOT);
    for (Unit other : column.kind().units()) {
      if (!tail.isEmpty() && other.called(tail)) {
        unit = other;
        number = reply.substring(0, reply.length() - tail.length()).strip();
      }
    }
    return Answer.of(number, column, unit, true);
  }

  private Unit unit(Column column) {
    List<Unit> units = column.kind().units();
    return us ? units.get(units.size() - 1) : units.get(0);
  }

  /** A length in metres as whoever is asked would say it. */
  String shown(double metres) {
    Unit unit = us ? Unit.FT : Unit.M;
    return Math.round(10 * metres / unit.metric()) / 10.0 + " " + unit.word();
  }

  private static Answer usable(String yaml) {
    return new Answer(yaml, "", "", "");
  }

  private static Answer wrong(String reply, String help) {
    return new Answer("", SheetFaults.quoted(reply), help, "");
  }
}
