package longbough.runner.scenario;

import java.util.List;
import longbough.runner.yaml.Fields;

/** Items of a list that each hold one key, the kind of thing that they are. */
final class SingleKey {

  private SingleKey() {}

  /** The keys written in an item; none or several of them is a mistake, which is noted. */
  static List<String> of(Fields item, String noun) {
    if (item.written().size() > 1) {
      item.mistake(
          noun + "s " + String.join(" and ", item.written()) + " in one item",
          "one " + noun + " in each item of the list",
          "start each " + noun + " on a line of its own with '- '");
    }
    if (item.blank()) {
      String one = ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
      item.mistake("an empty item", one, "name " + one + ", or remove the item");
    }
    return item.written();
  }
}
