package longbough.runner.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import longbough.runner.cuts.CutTable;
import longbough.runner.cuts.page.CutPage;
import longbough.runner.table.OutputFile;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longbough cuts}: what collar, stub and flush cuts of four sizes lead to. */
@Command(name = "cuts")
final class CutsCommand implements Callable<Integer> {
  private static final int SUGGESTIONS = 3;
  private static final int MOST_YEARS = 100;
  private static final double LEAST_TRUNK_CM = 25;
  private static final double MOST_TRUNK_CM = 200;
  private static final double MOST_RING_MM = 15;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "SPECIES",
      description =
          "Species to cut; by default a weak and a strong one: aesculus-hippocastanum and carpinus-betulus.")
  private List<String> species = new ArrayList<>();

  @Option(names = "--years", paramLabel = "N", description = "Years to play; by default 20.")
  private int years = 20;

  @Option(
      names = "--trunk-cm",
      paramLabel = "CM",
      description = "Diameter of the trunk at breast height, 25 to 200; by default 40.")
  private double trunkCm = 40;

  @Option(
      names = "--ring-mm",
      paramLabel = "MM",
      description = "Growth of the radius a year, 0 to 15; by default 3.")
  private double ringMm = 3;

  @Option(names = "--csv", paramLabel = "FILE", description = "Also write the table as CSV.")
  private Path csv;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description =
          "Also write a page with the table, charts, and the closing faces drawn to scale.")
  private Path html;

  @Override
  public Integer call() throws IOException {
    List<String> ids = checked();
    OutputFile file = csv == null ? null : OutputFile.prepare(csv, "--csv");
    OutputFile page = html == null ? null : OutputFile.prepare(html, "--html");
    CutTable table = CutTable.of(ids, trunkCm / 100, ringMm / 1000, years);
    PrintWriter out = spec.commandLine().getOut();
    table.lines().forEach(out::println);
    if (file != null) {
      file.write(table.csv());
      out.println();
      out.println("CSV: " + PrintableText.of(file.path().toString()));
    }
    if (page != null) {
      page.write(CutPage.of(table, Version.text()));
      out.println();
      out.println("Page: " + PrintableText.of(page.path().toString()));
    }
    out.flush();
    return ExitCode.OK;
  }

  private List<String> checked() {
    List<Problem> problems = new ArrayList<>();
    number(problems, "--years", years, 1, MOST_YEARS);
    number(problems, "--trunk-cm", trunkCm, LEAST_TRUNK_CM, MOST_TRUNK_CM);
    number(problems, "--ring-mm", ringMm, 0, MOST_RING_MM);
    List<String> ids = new ArrayList<>();
    List<String> asked =
        species.isEmpty() ? List.of("aesculus-hippocastanum", "carpinus-betulus") : species;
    SpeciesLibrary library = SpeciesLibrary.load();
    for (String name : asked) {
      library
          .find(name)
          .map(SpeciesTraits::id)
          .ifPresentOrElse(ids::add, () -> problems.add(unknown(library, name)));
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return ids;
  }

  private static void number(
      List<Problem> problems, String option, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      String allowed = plain(low) + " to " + plain(high);
      problems.add(new Problem("", 0, 0, option, plain(value), allowed, "give a number between"));
    }
  }

  private static Problem unknown(SpeciesLibrary library, String name) {
    return new Problem(
        "",
        0,
        0,
        "species",
        "'" + name + "', which is not in the library",
        "an id, scientific name or English name; nearest: "
            + String.join(", ", library.nearest(name, SUGGESTIONS)),
        "'longbough species' lists all of them");
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
