package longbough.runner.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import longbough.runner.species.SpeciesList;
import longbough.runner.species.SpeciesSheet;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * {@code longbough species}: lists the library; with a name, shows that species and its sources.
 */
@Command(name = "species")
final class SpeciesCommand implements Callable<Integer> {

  private static final int SUGGESTIONS = 3;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "SPECIES",
      description =
          "Id, scientific name or English name of one species, e.g. tilia-cordata or 'silver birch'.")
  private String species;

  @Override
  public Integer call() {
    SpeciesLibrary library = SpeciesLibrary.load();
    PrintWriter out = spec.commandLine().getOut();
    List<String> lines =
        species == null
            ? new SpeciesList(library).lines()
            : new SpeciesSheet(library.entry(found(library).id())).lines();
    lines.forEach(out::println);
    out.flush();
    return ExitCode.OK;
  }

  private SpeciesTraits found(SpeciesLibrary library) {
    return library
        .find(species)
        .orElseThrow(
            () ->
                new InputException(
                    List.of(
                        new Problem(
                            "",
                            0,
                            0,
                            "species",
                            "'" + species + "', which is not in the library",
                            "an id, scientific name or English name; nearest: "
                                + String.join(", ", library.nearest(species, SUGGESTIONS)),
                            "'longbough species' lists all of them"))));
  }
}
