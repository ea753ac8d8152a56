package longbough.runner.cli;

import java.io.IOException;

/**
 * A failure that the user's input does not explain, told in two lines.
 *
 * @param what what happened
 * @param mend what to try
 */
record Breakdown(String what, String mend) {

  static Breakdown of(Throwable failure) {
    IOException io = Failures.cause(failure, IOException.class);
    if (io != null) {
      return new Breakdown(
          "Reading or writing failed: " + named(io),
          "check that the disk has room and the folder may be written to");
    }
    if (Failures.cause(failure, OutOfMemoryError.class) != null) {
      return new Breakdown(
          "Out of memory.",
          "ask for fewer --members or --years, or allow more with JAVA_TOOL_OPTIONS=-Xmx4g");
    }
    if (fontsMissing(failure)) {
      return new Breakdown(
          "Java found no font to draw the charts with.",
          "install fontconfig and a font (Debian, Ubuntu: apt install fontconfig fonts-dejavu-core)");
    }
    return new Breakdown(
        "Internal error, please report it: " + named(failure),
        "run again with --trace to see where it arose");
  }

  String message() {
    return what + "\n  mend: " + mend;
  }

  private static String named(Throwable failure) {
    String message = failure.getMessage();
    return failure.getClass().getSimpleName() + (message == null ? "" : ": " + message);
  }

  /** The JDK has no exception of its own for this; the word stands in one of the causes. */
  private static boolean fontsMissing(Throwable failure) {
    return failure.toString().toLowerCase(java.util.Locale.ROOT).contains("fontconfig")
        || (failure.getCause() != null && fontsMissing(failure.getCause()));
  }
}
