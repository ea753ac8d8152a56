package longbough.runner.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The machine's own Chromium, without a window, and the checker of pages that it runs. */
final class Browser {
  private static final String CHECK =
      """
      axe.run().then(function (result) {
        var found = result.violations.map(function (rule) {
          return rule.impact + ' ' + rule.id + ': ' + rule.nodes.map(function (node) {
            return node.html.slice(0, 200);
          }).slice(0, 3).join(' | ');
        });
        var list = document.createElement('pre');
        list.textContent = '\\nfound ' + found.length + ' of ' + result.passes.length
            + '\\n' + found.join('\\n') + '\\nend\\n';
        document.body.replaceChildren(list);
      });
      """;

  private Browser() {}

  static Optional<Path> found() {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(":"))
        .flatMap(
            folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /**
   * What the checker finds against a page on a narrow window, one line a rule; the first line says
   * how many rules it broke and how many it kept.
   */
  static List<String> findings(Path browser, Path page, Path folder)
      throws IOException, InterruptedException {
    String text = Files.readString(page);
    // The page lets no script run; the copy that is looked at has to.
    String open = text.replaceAll("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "");
    String scripts =
        "<script>//<![CDATA[\n" + checker() + "\n//]]></script><script>" + CHECK + "</script>";
    Path copy = folder.resolve("looked-at.html");
    Files.writeString(copy, open.replace("</body>", scripts + "</body>"));
    Path out = folder.resolve("looked-at.txt");
    Process process =
        new ProcessBuilder(
                browser.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile"),
                "--window-size=420,900",
                "--virtual-time-budget=60000",
                "--dump-dom",
                copy.toUri().toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .redirectOutput(out.toFile())
            .start();
    if (!process.waitFor(120, TimeUnit.SECONDS)) {
      process.destroyForcibly();
    }
    List<String> lines = Files.readString(out).lines().toList();
    int start = 0;
    while (start < lines.size() && !lines.get(start).startsWith("found ")) {
      start++;
    }
    int end = lines.indexOf("end");
    if (end < start) {
      throw new IOException("the browser didn't finish looking at " + page);
    }
    return lines.subList(start, end);
  }

  private static String checker() throws IOException {
    try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
