package longbough.runner.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;

/** Whether a folder may be written: it is new, empty, or an earlier result and nothing else. */
final class OutputCheck {
  private static final String FIELD = "--out";
  private static final Set<String> OURS =
      Set.of(
          "years.csv",
          "visits.csv",
          "wounds.csv",
          "summary.csv",
          DoseFile.FILE,
          AssumptionFile.FILE,
          AssumptionFile.SHIFTS,
          LimitFile.FILE,
          PlanFile.FILE,
          PlanFile.WISHES,
          LimitFile.CURVES,
          OutputFolder.RANKED,
          OutputFolder.LEFT_OUT,
          "survival.csv",
          "measured.csv",
          "weights.csv",
          "forecast.csv",
          "verdict.csv",
          Manifest.FILE,
          "report.html",
          "client-report.html",
          "client-report.pdf",
          "tables.xlsx",
          "charts",
          "drawings");

  private OutputCheck() {}

  /** The folder as an absolute path with links followed; refused where it isn't ours to replace. */
  static Path usable(Path wanted) {
    Path target = wanted.toAbsolutePath().normalize();
    if (wanted.toString().isBlank()) {
      throw refused(wanted, "nothing", "a folder to write to");
    }
    if (Path.of("").toAbsolutePath().startsWith(target)) {
      throw refused(
          wanted,
          "the folder you are working in, which would be replaced",
          "another folder, e.g. one in it");
    }
    if (target.getFileName() == null) {
      throw refused(wanted, "the root of the file system", "a folder inside it");
    }
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      return target;
    }
    if (!Files.isDirectory(target)) {
      throw refused(wanted, "a file", "a new folder, or an earlier result of longbough");
    }
    try {
      Path real = target.toRealPath();
      refuseForeign(wanted, real);
      return real;
    } catch (IOException e) {
      throw refused(wanted, "a folder that cannot be read", "a folder you may read and write");
    }
  }

  private static void refuseForeign(Path wanted, Path folder) throws IOException {
    List<String> names;
    try (Stream<Path> inside = Files.list(folder)) {
      names = inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
    if (!names.isEmpty() && !Manifest.in(folder)) {
      throw refused(
          wanted,
          "a folder with other things in it (" + names.get(0) + ")",
          "a new or empty folder, or an earlier result of longbough");
    }
    List<String> foreign = names.stream().filter(name -> !OURS.contains(name)).toList();
    if (!foreign.isEmpty()) {
      throw refused(
          wanted,
          "an earlier result with other things in it (" + foreign.get(0) + "), which would be lost",
          "an earlier result and nothing else; move the other things away");
    }
  }

  /** The folders above the target that have to be made, the deepest first. */
  static List<Path> missingParents(Path target) {
    List<Path> missing = new ArrayList<>();
    for (Path at = target.getParent(); at != null && !Files.exists(at); at = at.getParent()) {
      missing.add(at);
    }
    return missing;
  }

  /** A new folder beside the target, on the same disk so that it can be moved in one step. */
  static Path partBeside(Path target, Path wanted) {
    String name = "." + target.getFileName() + "-part-" + ProcessHandle.current().pid() + "-";
    try {
      Files.createDirectories(target.getParent());
      for (int number = 1; ; number++) {
        Path part = target.resolveSibling(name + number);
        if (!Files.exists(part, LinkOption.NOFOLLOW_LINKS)) {
          return Files.createDirectory(part);
        }
      }
    } catch (IOException e) {
      throw refused(
          wanted, "a place that cannot be written", "a folder in which you may make files");
    }
  }

  private static InputException refused(Path wanted, String found, String allowed) {
    return new InputException(
        List.of(
            new Problem(
                wanted.toString(), 0, 0, FIELD, found, allowed, "name another folder with --out")));
  }
}
