package longbough.runner.cli;

import java.util.List;
import longbough.runner.compare.EnginePlayer;
import longbough.runner.update.Effort;

/** The one list of commands, in the order in which {@code --help} shows them. */
final class Subcommands {

  private static final List<Subcommand> ALL =
      List.of(
          new Subcommand(
              "compare",
              "Plays every regime of a scenario through the same futures and writes a report.",
              () -> new CompareCommand(new EnginePlayer())),
          new Subcommand(
              "report",
              "Writes the few pages that a client is handed, for the screen and on paper.",
              () -> new ReportCommand(new EnginePlayer())),
          new Subcommand(
              "dose",
              "Thins a tree in rising doses, with and without dry years.",
              () -> new DoseCommand(new EnginePlayer())),
          new Subcommand(
              "limit",
              "Shows how much live foliage one visit can take, by operation and season.",
              () -> new LimitCommand(new EnginePlayer())),
          new Subcommand(
              "gentler",
              "Looks for the gentlest plan that gives the client what was asked for.",
              GentlerCommand::new),
          new Subcommand(
              "assumptions",
              "Shows which parameters the verdict of a scenario leans on.",
              () -> new AssumptionsCommand(new EnginePlayer())),
          new Subcommand(
              "update",
              "Weighs the futures of a scenario by what was measured on a later visit.",
              () -> new UpdateCommand(Effort.USUAL)),
          new Subcommand(
              "batch",
              "Plays many trees and ranks them by the trouble they are in.",
              () -> new BatchCommand(new EnginePlayer())),
          new Subcommand(
              "import",
              "Turns sheets of trees, limbs, decay and wounds (CSV, XLSX) into scenarios.",
              ImportCommand::new),
          new Subcommand(
              "record",
              "Asks for one tree in the terminal and writes its scenario.",
              () -> new RecordCommand(System.in)),
          new Subcommand(
              "check",
              "Reads scenario files and says what was understood, without running.",
              CheckCommand::new),
          new Subcommand(
              "species",
              "Lists the species library, or shows one species with its sources.",
              SpeciesCommand::new),
          new Subcommand(
              "cuts",
              "Shows what collar, stub and flush cuts of four sizes lead to in twenty years.",
              CutsCommand::new),
          new Subcommand(
              "validate",
              "Plays the published checks and shows where the model meets them and where not.",
              ValidateCommand::new),
          new Subcommand(
              "fit",
              "Fits the parameters that no source gives to the published checks, in the open.",
              FitCommand::new));

  private Subcommands() {}

  static List<Subcommand> all() {
    return ALL;
  }
}
