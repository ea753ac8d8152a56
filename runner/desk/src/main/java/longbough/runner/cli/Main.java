package longbough.runner.cli;

import java.util.Locale;

/** Entry point of the {@code longbough} command. */
public final class Main {

  private Main() {}

  /** Runs one command and ends the process with its exit code, see {@link ExitCode}. */
  public static void main(String[] args) {
    // Numbers and dates must read the same on every machine, whatever its locale.
    Locale.setDefault(Locale.ENGLISH);
    System.setProperty("java.awt.headless", "true");
    System.exit(LongboughCommand.run(LongboughCommand.commandLine(args), args));
  }
}
