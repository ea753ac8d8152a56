package longbough.runner.survey;

import longbough.shared.problem.Problem;

/**
 * The cell that a value came from.
 *
 * @param place the file, and the sheet where it holds several
 * @param line row, from 1
 * @param column column, from 1; 0 for the row as a whole
 * @param heading the column's heading as written
 */
public record Origin(String place, int line, int column, String heading) {

  /** A mistake in that cell. */
  public Problem problem(String found, String allowed, String mend) {
    return new Problem(place, line, column, heading, found, allowed, mend);
  }
}
