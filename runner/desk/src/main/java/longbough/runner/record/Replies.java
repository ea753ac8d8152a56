package longbough.runner.record;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;

/** Lines from a terminal or a pipe; of a line that no person types the rest is passed over. */
final class Replies {
  private static final int LONGEST = 1_000;

  private final BufferedReader in;

  Replies(Reader in) {
    this.in = new BufferedReader(in);
  }

  /** The next line without what could steer a terminal, or null where the input has ended. */
  String next() throws IOException {
    StringBuilder line = new StringBuilder();
    int c = in.read();
    if (c < 0) {
      return null;
    }
    while (c >= 0 && c != '\n') {
      if (line.length() < LONGEST) {
        line.append((char) c);
      }
      c = in.read();
    }
    return line.toString().replaceAll("[\\p{Cc}\\p{Cf}]+", " ").strip();
  }
}
