package longbough.runner.cli;

import java.nio.file.Path;
import java.util.List;
import longbough.runner.scenario.ScenarioReader;
import longbough.shared.problem.Problem;
import longbough.shared.quantity.Range;

/** What several commands ask of their options. */
final class OptionCheck {
  private static final int MOST_THREADS = 1024;

  private OptionCheck() {}

  /** Notes a number outside what a scenario may say at that key; nothing given is fine. */
  static void key(List<Problem> problems, String option, String key, Number value) {
    Range range = ScenarioReader.keys().row("scenario", key).range();
    if (value != null
        && !(value.doubleValue() >= range.low() && value.doubleValue() <= range.high())) {
      String allowed = "%d to %d".formatted((long) range.low(), (long) range.high());
      problems.add(problem(option, value.toString(), allowed));
    }
  }

  static void threads(List<Problem> problems, Integer threads) {
    if (threads != null && (threads < 1 || threads > MOST_THREADS)) {
      problems.add(problem("--threads", threads.toString(), "1 to " + MOST_THREADS));
    }
  }

  static Problem problem(String option, String found, String allowed) {
    return new Problem("", 0, 0, option, found, allowed, "change " + option);
  }

  /** A file's name without folder and ending. */
  static String stem(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /** What several files together are called: by their folder; one by its own name. */
  static String nameOf(List<Path> files) {
    Path first = files.get(0).toAbsolutePath().normalize();
    Path named = files.size() > 1 && first.getParent() != null ? first.getParent() : first;
    return named.getFileName() == null ? "trees" : stem(named);
  }

  /** The path as a person would type it from here. */
  static Path shown(Path folder) {
    Path here = Path.of("").toAbsolutePath();
    return folder.startsWith(here) ? here.relativize(folder) : folder;
  }
}
