package longbough.runner.scenario;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import longbough.runner.scenario.written.WrittenWish;
import longbough.runner.scenario.written.WrittenWishes;
import longbough.runner.yaml.Fields;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.KeyRow;

/** What the client wants. */
final class WishBinder {

  private WishBinder() {}

  static WrittenWishes bind(Fields wishes) {
    return new WrittenWishes(
        wishes.path(),
        wishes.place(),
        wishes.text("first_idea"),
        wishes.whole("by_year"),
        wishes.whole("until_year"),
        wishes.maps("asked", "wish", "wish").stream().flatMap(WishBinder::wish).toList());
  }

  private static Stream<WrittenWish> wish(Fields item) {
    return SingleKey.of(item, "wish").stream()
        .map(word -> wish(word, item.map(word, word).orElseThrow()));
  }

  private static WrittenWish wish(String word, Fields keys) {
    Map<String, Given<Double>> numbers = new LinkedHashMap<>();
    for (KeyRow row : keys.rows()) {
      numbers.put(row.key(), keys.number(row.key()));
    }
    return new WrittenWish(word, keys.path(), keys.place(), numbers);
  }
}
