package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import longbough.runner.fit.Fit;
import longbough.runner.fit.FitPlan;
import longbough.runner.fit.FitResult;
import longbough.runner.fit.FreeList;
import longbough.runner.fit.file.ParameterFiles;
import longbough.runner.fit.file.ResultFiles;
import longbough.runner.table.OutputFolder;
import longbough.runner.validate.CheckLibrary;
import longbough.runner.validate.Experiments;
import longbough.runner.validate.experiment.Check;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.source.ParameterTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code longbough fit}: fits the free parameters to the published checks, and says how. */
@Command(
    name = "fit",
    footer = {
      "",
      "Only parameters that no source gives may be fitted. About a quarter of the checks is kept"
          + " apart and tells afterwards whether the fit learned the trees or only the checks.",
      "For example: longbough fit --screen",
      "             longbough fit --parameters 'sprout.*' --keep 4 --trials 60"
    })
final class FitCommand implements Callable<Integer> {

  private static final String WRITE = "--write";

  @Spec private CommandSpec spec;

  @Mixin private FitOptions options;

  @Override
  public Integer call() throws IOException, InterruptedException {
    ParameterTable table = ParameterLibrary.general();
    Map<String, Check> checks = CheckLibrary.load();
    FitPlan plan = options.plan(table, checks);
    // Asked for before anything is played: nobody should wait for a result that cannot be kept.
    ParameterFiles sources =
        options.write() == null
            ? null
            : ParameterFiles.prepare(options.write(), plan.space().axes(), WRITE);
    String date = LocalDate.now().toString();
    PrintWriter out = spec.commandLine().getOut();
    for (String outdated : FreeList.load(table).outdated()) {
      out.println("Not free any more, so left out: " + outdated);
    }
    try (OutputFolder output = OutputFolder.prepare(options.out())) {
      FitResult result = played(plan, checks);
      ResultFiles.write(output.folder(), result, Version.text(), date);
      Path folder = output.finish();
      FitText.lines(result).forEach(out::println);
      out.println();
      out.println("Report: " + PrintableText.of(folder.resolve(ResultFiles.REPORT).toString()));
      if (sources != null) {
        written(sources.write(result.fitted(), date), out);
      }
      out.flush();
    }
    return ExitCode.OK;
  }

  private FitResult played(FitPlan plan, Map<String, Check> checks) throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    int total = options.screen() ? plan.screeningTrials() : plan.allTrials();
    String what = options.screen() ? "Screening" : "Screening and fitting";
    ProgressBar bar = new ProgressBar(err, Terminal.watched(), what, total);
    try {
      return options.screen()
          ? Fit.screen(plan, Experiments.all(), checks, bar)
          : Fit.run(plan, Experiments.all(), checks, bar);
    } finally {
      bar.clear();
    }
  }

  private static void written(List<Path> files, PrintWriter out) {
    if (files.isEmpty()) {
      out.println("No parameter file was changed.");
      return;
    }
    files.forEach(file -> out.println("Changed: " + PrintableText.of(file.toString())));
    out.println("DEVELOPERS.md tells what to renew after a change of numbers.");
  }
}
