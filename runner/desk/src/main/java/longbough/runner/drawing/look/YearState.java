package longbough.runner.drawing.look;

import longbough.model.state.TreeState;

/**
 * A tree as it stood at the end of one year.
 *
 * @param year simulation year, 0 for the tree as measured
 * @param state a copy that nobody changes any more
 */
public record YearState(int year, TreeState state) {
  /** What is written under the drawing of this year. */
  public String heading() {
    return year == 0 ? "As measured" : "Year " + year;
  }
}
