package longbough.runner.scenario.written;

import java.util.Map;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Place;

/**
 * One wish with the values that its word allows.
 *
 * @param word the wish's word, e.g. {@code view}
 */
public record WrittenWish(
    String word, String path, Place place, Map<String, Given<Double>> numbers) {

  public Given<Double> number(String key) {
    return numbers.get(key);
  }
}
