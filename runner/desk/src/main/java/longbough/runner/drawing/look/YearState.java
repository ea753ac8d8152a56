package longbough.runner.drawing.look;

import longbough.model.state.TreeState;

/**
 * A tree as it stood at the end of one year.
 *
 * @param year simulation year, 0 for the tree as measured
 * @param state a copy that nobody changes any more
 * @param heading what is written under its drawing
 */
public record YearState(int year, TreeState state, String heading) {

  /** A tree among other years of the same regime, known by its year. */
  public YearState(int year, TreeState state) {
    this(year, state, year == 0 ? "As measured" : "Year " + year);
  }
}
