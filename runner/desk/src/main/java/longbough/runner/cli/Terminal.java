package longbough.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether somebody is watching. */
final class Terminal {
  private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

  private Terminal() {}

  /** Whether standard error goes to a terminal, so that a line there may be drawn over. */
  static boolean watched() {
    if (System.console() == null) {
      return false;
    }
    // The console only tells of input and output; where the system shows it, look at the third.
    if (!Files.exists(STANDARD_ERROR)) {
      return true;
    }
    try {
      String target = STANDARD_ERROR.toRealPath().toString();
      return target.startsWith("/dev/pts/")
          || target.startsWith("/dev/tty")
          || target.equals("/dev/console");
    } catch (IOException e) {
      return false;
    }
  }
}
