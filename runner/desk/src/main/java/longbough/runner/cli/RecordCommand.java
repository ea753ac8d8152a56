package longbough.runner.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import longbough.runner.record.Recording;
import longbough.runner.survey.Plan;
import longbough.runner.survey.TreeFiles;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough record}: asks for one tree in the terminal and writes its scenario. */
@Command(name = "record")
final class RecordCommand implements Callable<Integer> {
  private static final String REPLACE = "--replace";

  private final InputStream in;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "Scenario file to write (YAML).")
  private Path file;

  @Mixin private SheetOptions options;

  @Option(names = REPLACE, description = "Write over a file of that name.")
  private boolean replace;

  /** Reads the answers from a stream. */
  RecordCommand(InputStream in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    Path target = file.toAbsolutePath().normalize();
    String name = String.valueOf(target.getFileName());
    List<Problem> problems = new ArrayList<>();
    Plan plan = options.plan(problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    // Looked at before anything is asked: nobody should answer for a file that cannot be kept.
    TreeFiles.check(target.getParent(), Map.of(name, ""), replace, REPLACE);
    PrintWriter out = spec.commandLine().getOut();
    InputStreamReader replies = new InputStreamReader(in, StandardCharsets.UTF_8);
    // Where nobody types, nothing shows what was answered.
    boolean echo = System.console() == null;
    Optional<String> scenario = Recording.ask(replies, out, plan, OptionCheck.stem(target), echo);
    if (scenario.isPresent()) {
      TreeFiles.write(target.getParent(), Map.of(name, scenario.get()), replace, REPLACE);
      String shown = PrintableText.of(OptionCheck.shown(target).toString());
      out.println("Written: " + shown + ". Next: longbough compare " + shown);
    }
    out.flush();
    return ExitCode.OK;
  }
}
