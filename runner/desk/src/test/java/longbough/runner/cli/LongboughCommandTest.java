package longbough.runner.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletionException;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

class LongboughCommandTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void helpListsEverySubcommandWithoutMakingIt() {
    List<Subcommand> commands =
        List.of(
            new Subcommand(
                "prune",
                "Prunes.",
                () -> {
                  throw new AssertionError("made without need");
                }));
    assertThat(run(commands, "--help")).isZero();
    assertThat(out.toString()).contains("Usage: longbough", "prune", "Prunes.");
  }

  @Test
  void everyRegisteredSubcommandShowsItsHelp() {
    for (Subcommand subcommand : Subcommands.all()) {
      assertThat(run(Subcommands.all(), subcommand.name(), "--help"))
          .as(subcommand.name())
          .isZero();
      assertThat(out.toString()).contains("longbough " + subcommand.name(), subcommand.summary());
    }
  }

  @Test
  void versionIsFilledInByTheBuild() {
    assertThat(run(List.of(), "--version")).isZero();
    assertThat(out.toString()).matches("longbough \\d+\\.\\d+.*\\R");
  }

  @Test
  void noCommandIsAMistakeWithAHint() {
    assertThat(run(List.of())).isEqualTo(2);
    assertThat(err.toString()).contains("None was given", "longbough --help");
  }

  @Test
  void unknownWordsAndOptionsAreNamed() {
    assertThat(run(one(() -> 0), "prnue")).isEqualTo(2);
    assertThat(err.toString()).contains("prnue", "mend:");
    assertThat(run(one(() -> 0), "prune", "--depht=3")).isEqualTo(2);
    assertThat(err.toString()).contains("--depht=3", "longbough prune --help");
    assertThat(run(one(() -> 0), "prune", "--depth=three")).isEqualTo(2);
    assertThat(err.toString()).contains("three");
    noStackTrace();
  }

  @Test
  void everyProblemOfBadInputIsPrinted() {
    InputException input =
        new InputException(
            List.of(
                new Problem("a.yaml", 3, 5, "tree.height_m", "-1", "above 0", "measure again"),
                new Problem("a.yaml", 9, 1, "years", "\u001b[2Jx", "1 to 500", "")));
    assertThat(
            run(
                one(
                    () -> {
                      throw new CompletionException(input);
                    }),
                "prune"))
        .isEqualTo(2);
    assertThat(err.toString())
        .contains("a.yaml, line 3, column 5: tree.height_m: found -1; allowed: above 0")
        .contains("mend: measure again", "line 9", "\\u001b[2Jx")
        .doesNotContain("\u001b");
    noStackTrace();
  }

  @Test
  void internalErrorIsOneMessageUnlessTraced() {
    Callable<Integer> failing =
        () -> {
          throw new IllegalStateException("ledger open");
        };
    assertThat(run(one(failing), "prune")).isEqualTo(1);
    assertThat(err.toString()).contains("Internal error", "ledger open", "--trace");
    noStackTrace();
    assertThat(run(one(failing), "prune", "--trace")).isEqualTo(1);
    assertThat(err.toString()).contains("\tat longbough.");
  }

  @Test
  void failedWriteIsNotCalledInternal() {
    Callable<Integer> failing =
        () -> {
          throw new UncheckedIOException(new IOException("No space left on device"));
        };
    assertThat(run(one(failing), "prune")).isEqualTo(1);
    assertThat(err.toString()).contains("Reading or writing failed", "No space left");
    noStackTrace();
  }

  @Test
  void errorsOfTheMachineAreExplained() {
    assertThat(run(one(throwing(new OutOfMemoryError("Java heap space"))), "prune")).isEqualTo(1);
    assertThat(err.toString()).contains("Out of memory", "--members");
    noStackTrace();
    Error fonts =
        new InternalError(new RuntimeException("Fontconfig head is null, check your fonts"));
    assertThat(run(one(throwing(fonts)), "prune")).isEqualTo(1);
    assertThat(err.toString()).contains("no font", "fonts-dejavu-core");
    noStackTrace();
    assertThat(run(one(throwing(new StackOverflowError())), "prune")).isEqualTo(1);
    assertThat(err.toString()).contains("Internal error", "StackOverflowError", "--trace");
    noStackTrace();
  }

  private static Callable<Integer> throwing(Error error) {
    return () -> {
      throw error;
    };
  }

  @Test
  void argumentsAreNeverReadFromAFile() {
    assertThat(run(List.of(), "@pom.xml")).isEqualTo(2);
    assertThat(err.toString()).contains("@pom.xml");
  }

  private void noStackTrace() {
    assertThat(err.toString()).doesNotContain("\tat ");
  }

  private int run(List<Subcommand> commands, String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    CommandLine line = LongboughCommand.commandLine(commands, args);
    line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
    return LongboughCommand.run(line, args);
  }

  private static List<Subcommand> one(Callable<Integer> work) {
    return List.of(new Subcommand("prune", "Prunes.", () -> new Prune(work)));
  }

  @Command
  private static final class Prune implements Callable<Integer> {
    private final Callable<Integer> work;

    @Option(names = "--depth")
    private int depth;

    Prune(Callable<Integer> work) {
      this.work = work;
    }

    @Override
    public Integer call() throws Exception {
      return work.call();
    }
  }
}
