package longbough.runner.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longbough.runner.fit.FitPlan;
import longbough.runner.fit.FreeList;
import longbough.runner.fit.FreeParameter;
import longbough.runner.fit.KeptApart;
import longbough.runner.fit.Space;
import longbough.runner.fit.file.EarlierFit;
import longbough.runner.validate.experiment.Check;
import longbough.runner.yaml.Nearest;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.source.ParameterTable;
import picocli.CommandLine.Option;

/** What may be said on the command line of a fit. */
final class FitOptions {
  private static final int MOST_THREADS = 1024;
  private static final int MOST_TRIALS = 1_000_000;
  private static final int SUGGESTIONS = 3;

  @Option(
      names = "--screen",
      description = "Only find out what each parameter stirs, print the table, and fit nothing.")
  private boolean screen;

  @Option(
      names = "--parameters",
      paramLabel = "NAME",
      split = ",",
      description =
          "Only these free parameters (several: commas between); a group and a star, as in sprout.*,"
              + " takes all free ones of it. By default all.")
  private List<String> parameters;

  @Option(
      names = "--keep",
      paramLabel = "N",
      defaultValue = "12",
      description = "Fit the N that stir most; by default 12.")
  private Integer keep;

  @Option(
      names = "--checks",
      paramLabel = "CHECK",
      split = ",",
      description = "Train on these checks only (several: commas between).")
  private List<String> checks;

  @Option(
      names = "--trials",
      paramLabel = "N",
      defaultValue = "300",
      description = "Most points that the search tries; by default 300, a few seconds each.")
  private Integer trials;

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "Go on from the values of an earlier fit's fitted.csv.")
  private Path from;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description =
          "Experiments played side by side; by default one a processor. Changes no result.")
  private Integer threads;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = "out/fit",
      description = "Where the result goes; by default out/fit.")
  private Path out;

  @Option(
      names = "--write",
      paramLabel = "CHECKOUT",
      arity = "0..1",
      fallbackValue = ".",
      description =
          "Also write the new values into the parameter files of the checkout; by default that in"
              + " the folder at hand.")
  private Path write;

  boolean screen() {
    return screen;
  }

  Path out() {
    return out;
  }

  /** The checkout to write into; null where nothing is to be written. */
  Path write() {
    return write;
  }

  /** The plan that the options make; every mistake is reported together. */
  FitPlan plan(ParameterTable table, Map<String, Check> known) throws IOException {
    List<Problem> problems = new ArrayList<>();
    within(problems, "--keep", keep, MOST_TRIALS);
    within(problems, "--trials", trials, MOST_TRIALS);
    within(problems, "--threads", threads == null ? 1 : threads, MOST_THREADS);
    if (screen && write != null) {
      problems.add(
          problem("--write", "together with --screen", "one of them", "leave one of them out"));
    }
    Set<String> training = training(known, problems);
    List<FreeParameter> axes = axes(FreeList.load(table), problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    Space space = new Space(axes, table);
    double[] start = from == null ? space.start() : EarlierFit.point(from, space, "--from");
    int side = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
    return new FitPlan(space, start, training, KeptApart.checks().keySet(), keep, trials, side);
  }

  private List<FreeParameter> axes(FreeList free, List<Problem> problems) {
    if (parameters == null) {
      return free.all();
    }
    List<String> names = new ArrayList<>();
    for (String asked : parameters) {
      String name = asked.strip();
      if (name.endsWith("*")) {
        String start = name.substring(0, name.length() - 1);
        names.addAll(
            free.all().stream()
                .map(FreeParameter::name)
                .filter(one -> one.startsWith(start))
                .toList());
      } else {
        names.add(name);
      }
    }
    try {
      List<FreeParameter> axes = free.named(names, "--parameters");
      if (axes.isEmpty()) {
        problems.add(
            problem(
                "--parameters", "no free parameter", "at least one", "name one, or leave it out"));
      }
      return axes;
    } catch (InputException refused) {
      problems.addAll(refused.problems());
      return List.of();
    }
  }

  private Set<String> training(Map<String, Check> known, List<Problem> problems) {
    Set<String> apart = KeptApart.checks().keySet();
    Set<String> training = new LinkedHashSet<>();
    if (checks == null) {
      known.keySet().stream().filter(id -> !apart.contains(id)).forEach(training::add);
      return training;
    }
    for (String asked : checks) {
      String id = asked.strip();
      if (!known.containsKey(id)) {
        String near = String.join(", ", Nearest.of(id, List.copyOf(known.keySet()), SUGGESTIONS));
        problems.add(
            problem(
                "--checks",
                "'" + id + "', which is none of the checks",
                "ids of checks; nearest: " + near,
                "'longbough validate' lists all of them"));
      } else if (apart.contains(id)) {
        problems.add(
            problem(
                "--checks",
                "'" + id + "', which is kept apart to judge fits by",
                "checks to train on",
                "leave it out"));
      } else {
        training.add(id);
      }
    }
    return training;
  }

  private static void within(List<Problem> problems, String option, int value, int most) {
    if (value < 1 || value > most) {
      problems.add(problem(option, "" + value, "1 to " + most, "change " + option));
    }
  }

  private static Problem problem(String option, String found, String allowed, String mend) {
    return new Problem("", 0, 0, option, found, allowed, mend);
  }
}
