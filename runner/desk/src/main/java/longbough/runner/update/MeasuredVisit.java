package longbough.runner.update;

import java.util.Comparator;
import java.util.List;

/**
 * Everything that was measured on later visits to one tree.
 *
 * @param file the file's name without folder
 * @param sha256 fingerprint of the file
 * @param figures the figures but for alive, by year and then in the order of the file
 * @param lastAliveYear last year in which the tree is known to live; 0 where that is the start
 * @param deadByYear year in which the tree was found dead, or {@link Integer#MAX_VALUE}
 */
public record MeasuredVisit(
    String file, String sha256, List<Measured> figures, int lastAliveYear, int deadByYear) {

  public MeasuredVisit {
    // A stable sort: figures of one year keep the order of the file.
    figures = figures.stream().sorted(Comparator.comparingInt(Measured::year)).toList();
  }

  /** Whether the tree was found dead. */
  public boolean dead() {
    return deadByYear != Integer.MAX_VALUE;
  }

  /** The last year anything is known of. */
  public int lastYear() {
    int last = dead() ? deadByYear : lastAliveYear;
    return figures.stream().mapToInt(Measured::year).reduce(last, Math::max);
  }

  /** How many figures lie in the years up to and with this one. */
  int until(int year) {
    return (int) figures.stream().filter(figure -> figure.year() <= year).count();
  }

  /** Years with a figure, rising; the last year anything is known of is always among them. */
  List<Integer> years() {
    return java.util.stream.Stream.concat(
            figures.stream().map(Measured::year), java.util.stream.Stream.of(lastYear()))
        .distinct()
        .sorted()
        .toList();
  }

  /** Whether a tree that dies in that year fits what is known up to and with a year. */
  boolean fits(int deathYear, int untilYear) {
    boolean lived = deathYear > Math.min(lastAliveYear, untilYear);
    boolean died = !dead() || deadByYear > untilYear || deathYear <= deadByYear;
    return lived && died;
  }
}
