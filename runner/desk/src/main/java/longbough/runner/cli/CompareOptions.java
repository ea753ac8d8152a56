package longbough.runner.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.model.pruning.Regime;
import longbough.runner.yaml.Nearest;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Option;

/** What may be said on the command line in place of what the scenario says. */
final class CompareOptions {
  @Option(
      names = "--years",
      paramLabel = "N",
      description = "Years to play, instead of the scenario's.")
  private Integer years;

  @Option(
      names = "--members",
      paramLabel = "N",
      description = "Futures for each regime, instead of the scenario's.")
  private Integer members;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of all chance, instead of the scenario's.")
  private Long seed;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Futures played side by side; by default one a processor. Changes no result.")
  private Integer threads;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the result goes; by default out/ and the scenario's name.")
  private Path out;

  @Option(
      names = "--xlsx",
      description = "Also write all tables as the sheets of one workbook (tables.xlsx).")
  private boolean workbook;

  @Option(
      names = "--regimes",
      paramLabel = "NAME",
      description =
          "Only these regimes (several: commas between, or the option again), in this order; the first is"
              + " the reference.")
  private List<String> regimes;

  /** The input with the options in place; every mistake is reported together. */
  SimulationInput applied(SimulationInput input) {
    List<Problem> problems = new ArrayList<>();
    OptionCheck.key(problems, "--years", "years", years);
    OptionCheck.key(problems, "--members", "members", members);
    OptionCheck.key(problems, "--seed", "seed", seed);
    OptionCheck.threads(problems, threads);
    List<Regime> chosen = chosen(input.regimes(), problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return input.playing(
        chosen,
        years == null ? input.years() : years,
        members == null ? input.members() : members,
        seed == null ? input.seed() : seed);
  }

  int threads() {
    return threads == null ? Runtime.getRuntime().availableProcessors() : threads;
  }

  boolean workbook() {
    return workbook;
  }

  Path out(Path scenario) {
    return out(scenario, "");
  }

  /** The folder asked for, or that of the scenario's name with an ending. */
  Path out(Path scenario, String ending) {
    return out == null ? Path.of("out", OptionCheck.stem(scenario) + ending) : out;
  }

  private List<Regime> chosen(List<Regime> all, List<Problem> problems) {
    if (regimes == null) {
      return all;
    }
    List<String> known = all.stream().map(Regime::name).toList();
    List<Regime> chosen = new ArrayList<>();
    for (String name : asked(known)) {
      int index = known.indexOf(name);
      if (index < 0) {
        String nearest = String.join(", ", Nearest.of(name, known, known.size()));
        problems.add(
            OptionCheck.problem(
                "--regimes", "'" + name + "'", "regimes of the scenario: " + nearest));
      } else if (chosen.contains(all.get(index))) {
        problems.add(OptionCheck.problem("--regimes", "'" + name + "' again", "each regime once"));
      } else {
        chosen.add(all.get(index));
      }
    }
    return chosen;
  }

  /** The names asked for; a comma may also be part of a name. */
  private List<String> asked(List<String> known) {
    List<String> names = new ArrayList<>();
    for (String given : regimes) {
      List<String> parts = known.contains(given) ? List.of(given) : List.of(given.split(",", -1));
      parts.forEach(part -> names.add(part.strip()));
    }
    return names;
  }
}
