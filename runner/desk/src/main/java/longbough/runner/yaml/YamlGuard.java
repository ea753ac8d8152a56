package longbough.runner.yaml;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/**
 * Reads a text's events before any node is built, and refuses what plain data need not have: depth
 * (nodes are built by recursion), anchors and aliases (a few lines can stand for gigabytes), merge
 * keys, tags, more than one document, and more values than anybody writes.
 */
final class YamlGuard {

  static final int DEEPEST = 40;

  /** Far more than a scenario with every limb and many visits; far less than costs a second. */
  static final int MOST_NODES = 50_000;

  private final Mistakes mistakes;
  private int depth;
  private int documents;
  private int nodes;

  private YamlGuard(Mistakes mistakes) {
    this.mistakes = mistakes;
  }

  static void check(String text, LoadSettings settings, Mistakes mistakes) {
    YamlGuard guard = new YamlGuard(mistakes);
    for (Event event : new Parse(settings).parseString(text)) {
      guard.look(event);
    }
    mistakes.throwIfAny();
  }

  private void look(Event event) {
    Place place = Place.of(event.getStartMark());
    if (event instanceof DocumentStartEvent) {
      documents++;
      if (documents > 1) {
        throw mistakes.fatal(
            place,
            "a second document",
            "one document in a file",
            "remove the line '---', or split the file");
      }
    } else if (event instanceof AliasEvent) {
      mistakes.add(place, "", "an alias (*)", "plain values", "write the value out");
    } else if (event instanceof NodeEvent node) {
      lookAtNode(node, place);
    } else if (event instanceof CollectionEndEvent) {
      depth--;
    }
  }

  private void lookAtNode(NodeEvent node, Place place) {
    if (++nodes > MOST_NODES) {
      throw mistakes.fatal(
          place,
          "more than " + MOST_NODES + " keys and values",
          "a scenario needs some thousands at most",
          "check that this is the file you meant");
    }
    if (node.getAnchor().isPresent()) {
      mistakes.add(
          place,
          "",
          "an anchor (&)",
          "plain values",
          "remove it; text that starts with & or * needs quotes");
    }
    tag(node)
        .ifPresent(
            tag ->
                mistakes.add(
                    place,
                    "",
                    "a tag (!)",
                    "plain values",
                    "remove it; text that starts with ! needs quotes"));
    if (node instanceof ScalarEvent scalar && scalar.isPlain() && scalar.getValue().equals("<<")) {
      mistakes.add(place, "", "a merge key (<<)", "plain keys", "write the keys out");
    }
    if (node instanceof CollectionStartEvent && ++depth > DEEPEST) {
      throw mistakes.fatal(
          place,
          "blocks nested more than " + DEEPEST + " deep",
          "a scenario needs eight",
          "check that this is the file you meant");
    }
  }

  private static Optional<String> tag(NodeEvent node) {
    if (node instanceof ScalarEvent scalar) {
      return scalar.getTag();
    }
    return node instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
  }
}
