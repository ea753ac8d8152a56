package longbough.runner.cli;

import java.io.PrintWriter;
import java.io.Writer;
import picocli.CommandLine;

/**
 * Run once after a build, so that the JVM can archive the classes that every start needs. Asks each
 * command for its help and reads the data files, but writes nothing.
 */
public final class StartUpRehearsal {

  private StartUpRehearsal() {}

  public static void main(String[] args) {
    rehearse("--help");
    rehearse("--version");
    rehearse("--no-such-option");
    for (Subcommand subcommand : Subcommands.all()) {
      rehearse(subcommand.name(), "--help");
    }
    rehearse("species");
  }

  private static void rehearse(String... args) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    CommandLine line = LongboughCommand.commandLine(args);
    line.setOut(nowhere).setErr(nowhere).execute(args);
  }
}
