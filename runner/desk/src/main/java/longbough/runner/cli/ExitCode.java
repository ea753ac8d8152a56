package longbough.runner.cli;

/** What the process returns to the shell. */
public final class ExitCode {
  /** The work was done. */
  public static final int OK = 0;

  /** Something failed that the user's input does not explain. */
  public static final int FAILED = 1;

  /** The command line or a file was not usable; the message says what to mend. */
  public static final int BAD_INPUT = 2;

  private ExitCode() {}
}
