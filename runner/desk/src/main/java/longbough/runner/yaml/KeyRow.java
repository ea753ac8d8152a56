package longbough.runner.yaml;

import java.util.List;
import longbough.shared.quantity.Range;

/**
 * One key that may be written: where, what kind of value, within which limits, and what it means.
 *
 * @param section block to which it belongs
 * @param key the key
 * @param kinds one or more of number, whole, text, word, flag, map, list
 * @param range of a number; of a text or list its length
 * @param words allowed words
 * @param required whether it must be there
 * @param meaning a clause that says what it is
 */
public record KeyRow(
    String section,
    String key,
    List<String> kinds,
    Range range,
    List<String> words,
    boolean required,
    String meaning) {

  /** What may stand here, for a message. */
  String allowed() {
    return String.join(", or ", kinds.stream().map(this::allowed).toList());
  }

  private String allowed(String kind) {
    String span = Plain.number(range.low()) + " to " + Plain.number(range.high());
    return switch (kind) {
      case "number" -> "a number from " + span;
      case "whole" -> "a whole number from " + span;
      case "text" -> "text of " + span + " characters";
      case "word" -> (words.size() > 1 ? "one of " : "") + String.join(", ", words);
      case "flag" -> "true or false";
      case "list" ->
          "a list of " + (range.low() == range.high() ? Plain.number(range.low()) : span);
      default -> "a block of keys";
    };
  }
}
