package longbough.runner.scenario.written;

import java.util.Map;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Place;

/**
 * One operation with the values that its word allows.
 *
 * @param word the operation's word, e.g. {@code thin}
 * @param numbers its numeric keys, present or absent
 * @param words its keys that take a word, present or absent
 */
public record WrittenOperation(
    String word,
    String path,
    Place place,
    Map<String, Given<Double>> numbers,
    Map<String, Given<String>> words) {

  public Given<Double> number(String key) {
    return numbers.get(key);
  }

  public Given<String> wordAt(String key) {
    return words.get(key);
  }
}
