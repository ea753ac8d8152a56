package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import longbough.runner.validate.CheckLibrary;
import longbough.runner.validate.Validation;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.ValidationTable;
import longbough.runner.validate.field.FieldReport;
import longbough.runner.validate.field.FieldText;
import longbough.runner.validate.field.OpenData;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough validate}: plays the published checks and prints how the model stands. */
@Command(name = "validate")
final class ValidateCommand implements Callable<Integer> {

  private static final String DATA = "--data";
  private static final String SINGLE =
      "The comparison with open measurements is left out where single checks are named.";
  private static final long QUIET_NANOS = 1_000_000_000;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "CHECK",
      description = "Ids of single checks, e.g. F28; all of them where none is named.")
  private List<String> only = new ArrayList<>();

  @Option(
      names = DATA,
      paramLabel = "FOLDER",
      description =
          "Folder of open measurements to set the model beside; by default shared/data beside the"
              + " checkout, where it is.")
  private Path data;

  @Mixin private ValidateOutput output;

  @Override
  public Integer call() throws IOException {
    refuseUnknown();
    Optional<OpenData> measured =
        data == null ? OpenData.find() : Optional.of(OpenData.named(data, DATA));
    boolean compare = only.isEmpty() && (output.wanted() || data != null);
    int species = compare ? FieldReport.read(measured) : 0;
    output.prepare();
    List<ValidationRow> rows = played(new LinkedHashSet<>(only));
    FieldReport field = compare ? compared(measured, rows, species) : FieldReport.none(SINGLE);
    PrintWriter out = spec.commandLine().getOut();
    ValidationTable.lines(rows).forEach(out::println);
    if (compare) {
      out.println();
      FieldText.lines(field).stream().map(PrintableText::of).forEach(out::println);
    }
    output.write(rows, field, out);
    out.flush();
    return ExitCode.OK;
  }

  private FieldReport compared(Optional<OpenData> measured, List<ValidationRow> rows, int species) {
    ProgressBar bar =
        new ProgressBar(
            spec.commandLine().getErr(),
            Terminal.watched(),
            "Growing trees among measured ones",
            Math.max(1, species));
    try {
      return FieldReport.of(measured, rows, bar);
    } finally {
      bar.clear();
    }
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
    Set<String> known = new LinkedHashSet<>(CheckLibrary.load().keySet());
    known.addAll(CheckLibrary.own().keySet());
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
