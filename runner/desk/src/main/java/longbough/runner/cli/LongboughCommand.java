package longbough.runner.cli;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The root command: names the subcommands and holds the options that all of them share. */
@Command(
    name = "longbough",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Plays one landscape tree forward under different pruning regimes.",
    footer = {
      "",
      "For example: longbough compare scenarios/canal-side-lime.yaml --members 50",
      "'longbough COMMAND --help' explains one command.",
      "Exit codes: 0 done, 1 failed, 2 the input needs mending."
    })
public final class LongboughCommand implements Callable<Integer> {

  @Option(
      names = "--trace",
      scope = ScopeType.INHERIT,
      description = "On an internal error, also print where in the program it arose.")
  private boolean trace;

  @Spec private CommandSpec spec;

  /** Whether the user asked for the details of an internal error. */
  boolean trace() {
    return trace;
  }

  /** Reached only when no subcommand was named. */
  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "Which command? None was given.");
  }

  /** Runs one command line and returns its exit code; nothing is thrown. */
  static int run(CommandLine line, String... args) {
    try {
      return line.execute(args);
    } catch (Error error) {
      LongboughCommand root = line.getCommand();
      return new Failures(root).report(error, line.getErr());
    }
  }

  /** The root command with its subcommands; only those that the arguments name are really made. */
  public static CommandLine commandLine(String... args) {
    return commandLine(Subcommands.all(), args);
  }

  static CommandLine commandLine(List<Subcommand> subcommands, String... args) {
    LongboughCommand root = new LongboughCommand();
    CommandLine line = new CommandLine(root);
    List<String> words = Arrays.asList(args);
    for (Subcommand subcommand : subcommands) {
      line.addSubcommand(subcommand.name(), listed(subcommand, words.contains(subcommand.name())));
    }
    Failures failures = new Failures(root);
    line.registerConverter(Integer.class, text -> whole(text, Integer::valueOf));
    line.registerConverter(Long.class, text -> whole(text, Long::valueOf));
    return line.setExpandAtFiles(false)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(failures)
        .setExecutionExceptionHandler(failures);
  }

  private static <T> T whole(String text, Function<String, T> reading) {
    try {
      return reading.apply(text);
    } catch (NumberFormatException refused) {
      throw new TypeConversionException("'" + text + "' is not a whole number, or too large a one");
    }
  }

  private static CommandLine listed(Subcommand subcommand, boolean needed) {
    CommandLine line =
        needed
            ? new CommandLine(subcommand.create().get())
            : new CommandLine(CommandSpec.create().name(subcommand.name()));
    line.getCommandSpec().mixinStandardHelpOptions(true).versionProvider(new Version());
    line.getCommandSpec().usageMessage().description(subcommand.summary());
    return line;
  }
}
