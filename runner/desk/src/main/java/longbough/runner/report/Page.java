package longbough.runner.report;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import longbough.runner.chart.MarkupText;

/** A page being written: every element opened is closed, every text is escaped. */
public final class Page {
  /** Elements within a line: white space after them would show. */
  private static final Set<String> INLINE = Set.of("span", "i", "em", "strong", "small", "code");

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element; attributes are name, value, name, value. */
  public Page open(String element, String... attributes) {
    tag(element, attributes);
    out.append('>');
    open.push(element);
    return this;
  }

  /**
   * A block with a table that may be wider than a small screen; who has no mouse can get into it
   * and move it.
   */
  public Page scroll() {
    return open("div", "class", "scroll", "tabindex", "0", "role", "group", "aria-label", "Table");
  }

  public Page close() {
    String element = open.pop();
    out.append("</").append(element).append(INLINE.contains(element) ? ">" : ">\n");
    return this;
  }

  /** An element that holds nothing. */
  public Page empty(String element, String... attributes) {
    tag(element, attributes);
    out.append("/>\n");
    return this;
  }

  /** An element that holds a text. */
  public Page element(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close();
  }

  public Page text(String text) {
    out.append(MarkupText.of(text));
    return this;
  }

  /** Markup of our own making. */
  public Page markup(String markup) {
    out.append(markup);
    return this;
  }

  String done() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("left open: " + open);
    }
    return out.toString();
  }

  private void tag(String element, String... attributes) {
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      out.append(MarkupText.of(attributes[i + 1])).append('"');
    }
  }
}
