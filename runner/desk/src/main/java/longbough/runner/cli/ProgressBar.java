package longbough.runner.cli;

import java.io.PrintWriter;
import java.util.function.IntConsumer;

/** One line on a terminal that fills up; silent where nobody watches. */
final class ProgressBar implements IntConsumer {
  private static final int WIDTH = 30;
  private static final long REDRAW_NANOS = 80_000_000;

  private final PrintWriter err;
  private final String what;
  private final long total;
  private final boolean shown;
  private int highest;
  private long drawnAt;

  ProgressBar(PrintWriter err, boolean shown, String what, long total) {
    this.err = err;
    this.shown = shown;
    this.what = what;
    this.total = total;
  }

  /** Told from any thread how many of the total are done. */
  @Override
  public void accept(int done) {
    if (shown) {
      draw(done);
    }
  }

  /** Takes the line away. */
  synchronized void clear() {
    if (shown) {
      err.print("\r\u001b[K");
      err.flush();
    }
  }

  private synchronized void draw(int done) {
    highest = Math.max(highest, done);
    long now = System.nanoTime();
    if (now - drawnAt < REDRAW_NANOS) {
      return;
    }
    drawnAt = now;
    int filled = (int) (WIDTH * highest / total);
    String bar = "#".repeat(filled) + ".".repeat(WIDTH - filled);
    err.print("\r" + what + " [" + bar + "] " + 100L * highest / total + " %");
    err.flush();
  }
}
