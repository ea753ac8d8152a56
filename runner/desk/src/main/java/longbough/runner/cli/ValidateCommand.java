package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import longbough.runner.table.OutputFile;
import longbough.runner.validate.CheckLibrary;
import longbough.runner.validate.Validation;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.ValidationTable;
import longbough.runner.validate.page.ValidationPage;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough validate}: plays the published checks and prints how the model stands. */
@Command(name = "validate")
final class ValidateCommand implements Callable<Integer> {

  private static final long QUIET_NANOS = 1_000_000_000;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "CHECK",
      description = "Ids of single checks, e.g. F28; all of them where none is named.")
  private List<String> only = new ArrayList<>();

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Also write the table as a page with a picture per check.")
  private Path html;

  @Override
  public Integer call() throws IOException {
    refuseUnknown();
    // Asked for before anything is played: nobody should wait for a page that cannot be kept.
    OutputFile page = html == null ? null : OutputFile.prepare(html, "--html");
    List<ValidationRow> rows = played(new LinkedHashSet<>(only));
    PrintWriter out = spec.commandLine().getOut();
    ValidationTable.lines(rows).forEach(out::println);
    if (page != null) {
      page.write(ValidationPage.of(rows, Version.text()));
      out.println();
      out.println("Page: " + PrintableText.of(page.path().toString()));
    }
    out.flush();
    return ExitCode.OK;
  }

  private List<ValidationRow> played(Set<String> asked) {
    int total = Math.max(1, Validation.experiments(asked));
    PrintWriter err = spec.commandLine().getErr();
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), "Playing the checks", total);
    long began = System.nanoTime();
    try {
      return Validation.run(asked, done -> show(bar, done, System.nanoTime() - began));
    } finally {
      bar.clear();
    }
  }

  /** A short wait needs no bar. */
  private static void show(ProgressBar bar, int done, long nanos) {
    if (nanos > QUIET_NANOS) {
      bar.accept(done);
    }
  }

  private void refuseUnknown() {
    Set<String> known = CheckLibrary.load().keySet();
    List<Problem> problems = new ArrayList<>();
    for (String id : only) {
      if (!known.contains(id)) {
        problems.add(
            new Problem(
                "",
                0,
                0,
                "check",
                "'" + id + "', which is none of the checks",
                "an id from " + known.iterator().next() + " on",
                "'longbough validate' without a name lists all of them"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }
}
