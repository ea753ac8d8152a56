package longbough.runner.scenario;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Level;
import longbough.runner.yaml.Plain;

/** The sentences that say what was filled in, in the order in which it was. */
final class Notes {

  private final List<String> sentences = new ArrayList<>();

  void add(String sentence) {
    if (!sentences.contains(sentence)) {
      sentences.add(sentence);
    }
  }

  List<String> sentences() {
    return List.copyOf(sentences);
  }

  /** The given number, or the default of that name, which is then noted. */
  double number(Given<Double> given, String what, String fallback, String unit) {
    return given.present() ? given.value() : fallback(what, fallback, unit);
  }

  /** The given whole number, or the default of that name, which is then noted. */
  long whole(Given<Long> given, String what, String fallback, String unit) {
    return given.present() ? given.value() : (long) fallback(what, fallback, unit);
  }

  private double fallback(String what, String fallback, String unit) {
    double value = Presets.fallback(fallback);
    add(
        what
            + " not given: "
            + Plain.number(value)
            + (unit.isEmpty() ? "" : " " + unit)
            + " taken.");
    return value;
  }

  /** The given word or number; what a word stands for, and a default word, are noted. */
  double level(Given<Level> given, String what, String key, String fallback, String unit) {
    if (given.present() && given.value().word().isEmpty()) {
      return given.value().value();
    }
    String word = given.present() ? given.value().word() : fallback;
    double value = Presets.word(key, word);
    String number = Plain.number(value) + (unit.isEmpty() ? "" : " " + unit);
    String plain = word.replace('_', ' ');
    add(
        given.present()
            ? what + " '" + plain + "' taken as " + number + "."
            : what + " not given: '" + plain + "' (" + number + ") taken.");
    return value;
  }
}
