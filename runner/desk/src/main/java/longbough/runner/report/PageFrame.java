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
    Page page = new Page();
    page.markup("<!DOCTYPE html>\n");
    page.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en", "xml:lang", "en");
    page.open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", POLICY);
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", title);
    page.open("style").markup(style(PageFrame.class, "report.css") + style).close();
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
