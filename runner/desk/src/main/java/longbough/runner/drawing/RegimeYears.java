package longbough.runner.drawing;

import java.util.List;
import longbough.runner.drawing.look.YearState;

/** What one regime made of the tree, at the years to draw. */
public record RegimeYears(String regime, List<YearState> years) {
  public RegimeYears {
    years = List.copyOf(years);
  }
}
