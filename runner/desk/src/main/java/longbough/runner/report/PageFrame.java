package longbough.runner.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/** What every page has around its body: valid both as HTML and as XML, and sealed off. */
public final class PageFrame {

  /** Nothing is loaded from anywhere, and no script runs, whatever a scenario holds. */
  private static final String POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

  private PageFrame() {}

  /**
   * A whole page.
   *
   * @param style rules of its own after the common ones, or nothing
   */
  public static String of(String title, String style, Consumer<Page> body) {
    return of("en", title, "", style(PageFrame.class, "report.css") + style, body);
  }

  /**
   * A whole page with rules of its own only.
   *
   * @param language as in {@code lang}
   * @param description what the page is about, in a sentence; may be empty
   */
  public static String of(
      String language, String title, String description, String style, Consumer<Page> body) {
    Page page = new Page();
    page.markup("<!DOCTYPE html>\n");
    page.open(
        "html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", language, "xml:lang", language);
    page.open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", POLICY);
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", title);
    if (!description.isEmpty()) {
      page.empty("meta", "name", "description", "content", description);
    }
    page.open("style").markup(style).close();
    page.close();
    page.open("body");
    body.accept(page);
    return page.close().close().done();
  }

  /** The rules in a file beside a class. */
  public static String style(Class<?> beside, String file) {
    try (InputStream in = beside.getResourceAsStream(file)) {
      return "\n" + new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
