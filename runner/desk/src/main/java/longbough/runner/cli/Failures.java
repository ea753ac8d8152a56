package longbough.runner.cli;

import java.io.PrintWriter;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns every failure into a message that says how to mend it, and into an exit code. */
final class Failures implements IParameterExceptionHandler, IExecutionExceptionHandler {

  private final LongboughCommand root;

  Failures(LongboughCommand root) {
    this.root = root;
  }

  /** A mistake on the command line itself. */
  @Override
  public int handleParseException(ParameterException mistake, String[] args) {
    CommandLine command = mistake.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(PrintableText.of(message(mistake)));
    UnmatchedArgumentException.printSuggestions(mistake, err);
    String name = command.getCommandSpec().qualifiedName();
    err.println("  mend: '" + name + " --help' lists what can be given");
    return ExitCode.BAD_INPUT;
  }

  private static String message(ParameterException mistake) {
    if (mistake instanceof UnmatchedArgumentException unmatched) {
      return "Not known here: '" + String.join("' '", unmatched.getUnmatched()) + "'";
    }
    return mistake.getMessage();
  }

  /** A command that threw: bad input, a disk or network that failed, or a mistake of ours. */
  @Override
  public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
    return report(failure, command.getErr());
  }

  /** Says what failed in one message; also for errors, which the command line library lets pass. */
  int report(Throwable failure, PrintWriter err) {
    InputException input = cause(failure, InputException.class);
    if (input != null) {
      for (Problem problem : input.problems()) {
        err.println(PrintableText.of(problem.message()));
      }
      return ExitCode.BAD_INPUT;
    }
    err.println(PrintableText.of(Breakdown.of(failure).message()));
    if (root.trace()) {
      failure.printStackTrace(err);
    }
    err.flush();
    return ExitCode.FAILED;
  }

  static <T extends Throwable> T cause(Throwable failure, Class<T> type) {
    int depth = 0;
    for (Throwable at = failure; at != null && depth < 50; at = at.getCause(), depth++) {
      if (type.isInstance(at)) {
        return type.cast(at);
      }
    }
    return null;
  }
}
