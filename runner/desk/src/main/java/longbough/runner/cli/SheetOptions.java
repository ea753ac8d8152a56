package longbough.runner.cli;

import java.nio.file.Path;
import java.util.List;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.survey.Plan;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import picocli.CommandLine.Option;

/** What the sheets leave open: regimes, crew, and where they are silent site and climate. */
final class SheetOptions {
  @Option(
      names = "--like",
      paramLabel = "SCENARIO",
      description =
          "Take regimes, crew, climate, years and futures from this scenario, and its site where the"
              + " sheet says nothing.")
  private Path like;

  @Option(
      names = "--climate",
      paramLabel = "NAME",
      description = "Climate of trees for which nothing else gives one.")
  private String climate;

  /** The plan, or null where it can't be had; its mistakes are noted. */
  Plan plan(List<Problem> problems) {
    try {
      Plan plan = like == null ? Plan.plain() : Plan.like(like);
      List<String> known = ScenarioReader.keys().row("scenario", "climate").words();
      if (climate != null && !known.contains(climate)) {
        problems.add(
            OptionCheck.problem("--climate", "'" + climate + "'", String.join(", ", known)));
        return plan.in(known.get(0));
      }
      return climate == null ? plan : plan.in(climate);
    } catch (InputException mistakes) {
      problems.addAll(mistakes.problems());
      return null;
    }
  }
}
