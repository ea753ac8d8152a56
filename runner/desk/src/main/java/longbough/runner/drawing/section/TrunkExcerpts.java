package longbough.runner.drawing.section;

import java.util.List;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.runner.drawing.look.Label;
import longbough.runner.drawing.look.ScaleBar;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Shape;

/**
 * The piece of each trunk about its weakest height, widths and heights at one and the same scale;
 * nothing where no trunk is decayed.
 */
final class TrunkExcerpts {
  private static final double HIGH = 230;
  private static final double HEAD = 36;
  private static final double FOOT = 40;

  /** A piece is this many times as long as the thickest trunk is thick, m within the limits. */
  private static final double LENGTH_OVER_THICKNESS = 4;

  private static final double SHORTEST_M = 0.6;
  private static final double LONGEST_M = 3;

  private final List<YearState> years;
  private final CutHeight cut;
  private final double lengthM;
  private final double units;

  TrunkExcerpts(List<YearState> years) {
    this.years = years;
    cut = new CutHeight(years);
    double thickest = 0;
    for (YearState year : years) {
      thickest = Math.max(thickest, 2 * year.state().trunk.radiusM[cut.station(year.state())]);
    }
    lengthM = Math.max(SHORTEST_M, Math.min(LONGEST_M, LENGTH_OVER_THICKNESS * thickest));
    units = HIGH / lengthM;
  }

  private boolean any() {
    return years.stream().anyMatch(year -> year.state().vitality.worstDecayAreaFraction > 0);
  }

  /** Paints a piece for each year and returns the height that they take. */
  double paint(double left, double right, double top, boolean[] shown, List<Shape> onto) {
    if (!any()) {
      return 0;
    }
    double panel = (right - left) / years.size();
    double bottom = top + HEAD + HIGH;
    String words = "the piece about the weakest height, widths and heights to scale";
    onto.add(Label.quiet(14, top + 14, words, Shape.Anchor.START));
    double barM = ScaleBar.roundLength(100 / units);
    String bar = barM < 1 ? Words.whole(100 * barM) + " cm" : Words.whole(barM) + " m";
    onto.addAll(ScaleBar.draw(right - units * barM - 6, top + 14, units * barM, bar));
    for (int i = 0; i < years.size(); i++) {
      TreeState state = years.get(i).state();
      double x = left + (i + 0.5) * panel;
      double low = lowM(state);
      double high = Math.min(low + lengthM, state.trunk.heightM);
      TrunkProfile profile =
          new TrunkProfile(state, x, bottom + units * low, units, units).between(low, high);
      String heights = Words.oneDecimal(low) + " to " + Words.oneDecimal(high) + " m up";
      List<Shape> piece = new TrunkSectionPainter(state, profile).paint(shown);
      onto.add(new Shape.Group(years.get(i).heading() + ", " + heights, 1, piece));
      onto.add(Label.quiet(x, bottom + 24, heights, Shape.Anchor.MIDDLE));
    }
    return HEAD + HIGH + FOOT;
  }

  /** Weakest height in the middle, as far as the trunk reaches. */
  private double lowM(TreeState state) {
    double middle = cut.station(state) * Trunk.STATION_STEP_M;
    double highest = Math.max(0, state.trunk.heightM - 0.9 * lengthM);
    return Math.max(0, Math.min(highest, middle - lengthM / 2));
  }
}
