package longbough.runner.drawing.elevation;

import java.util.List;
import longbough.model.state.LimbStatus;
import longbough.runner.drawing.look.Legend;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.StateWords;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** Names what the elevation shows; leaves out what it doesn't. */
final class ElevationLegend {
  private final Legend legend = new Legend();

  ElevationLegend(List<YearState> years, FoliageMarks marks, double clusterM2, Shown shown) {
    boolean leaves = years.stream().anyMatch(y -> y.state().limbs.leafAreaM2() > 0);
    boolean dead =
        years.stream()
            .anyMatch(
                y -> !y.state().vitality.alive || StateWords.limbs(y.state(), LimbStatus.DEAD) > 0);
    String one = clusterM2 < 0.095 ? Words.twoDecimals(clusterM2) : Words.brief(clusterM2);
    legend.add(leaves, "one mark for " + one + " m² of leaf", (x, y) -> leaf(marks, x, y));
    legend.add(shown.sprouts, "sprouts, a few for many", ElevationLegend::sprout);
    legend.add(dead, "deadwood", ElevationLegend::deadwood);
    legend.add(shown.openWounds, "open wound or cut end", ElevationLegend::openWound);
    legend.add(shown.closedWounds, "closed wound", ElevationLegend::closedWound);
    legend.add(shown.fallen, "faint: no longer stands", ElevationLegend::faint);
    legend.add(true, "person of 1.75 m", (x, y) -> Person.draw(x, y + 10, 12));
  }

  double paint(double left, double right, double top, List<Shape> onto) {
    legend.paint(left, right, top, onto);
    return legend.height(left, right);
  }

  private static List<Shape> leaf(FoliageMarks marks, double x, double y) {
    int[] place = {Outline.tenths(x), Outline.tenths(y)};
    return List.of(new Shape.Stamps(marks.leaf(1, 1), List.of(place)));
  }

  private static List<Shape> sprout(double x, double y) {
    Outline stem = new Outline().move(x, y + 11).line(x, y - 7);
    Outline leaves = new Outline();
    for (int pair = 0; pair < 2; pair++) {
      FoliageMarks.leaf(leaves, x - 4, y - 7 + 7 * pair, 0.75, 9, 0.3);
      FoliageMarks.leaf(leaves, x + 4, y - 7 + 7 * pair, -0.75, 9, 0.3);
    }
    Style style = Style.fill(Palette.SPROUT_LEAF).edged(Palette.SPROUT_EDGE, 0.6);
    return List.of(
        new Shape.Path(stem, Style.line(Palette.SPROUT_STEM, 1.3)), new Shape.Path(leaves, style));
  }

  private static List<Shape> deadwood(double x, double y) {
    Outline limb = new Outline().move(x - 13, y + 5).line(x + 12, y - 6).line(x - 13, y + 1);
    Style style = Style.fill(Palette.DEADWOOD).edged(Palette.DEADWOOD_EDGE, 0.7);
    return List.of(new Shape.Path(limb.close(), style));
  }

  private static List<Shape> faint(double x, double y) {
    return List.of(new Shape.Group("", 0.3, deadwood(x, y)));
  }

  private static List<Shape> openWound(double x, double y) {
    Style style = Style.fill(Palette.OPEN_WOUND).edged(Palette.WOUND_EDGE, 0.8);
    Shape rim = new Shape.Ellipse(x, y, 7, 8.5, Style.fill(Palette.WOUNDWOOD));
    return List.of(rim, new Shape.Ellipse(x, y, 5.5, 7, style));
  }

  private static List<Shape> closedWound(double x, double y) {
    Outline seam = new Outline().move(x, y - 4).line(x, y + 4);
    return List.of(
        new Shape.Ellipse(x, y, 10, 9, Style.fill(Palette.BARK)),
        new Shape.Ellipse(x, y, 6, 7, Style.line(Palette.WOUNDWOOD, 1.2)),
        new Shape.Path(seam, Style.line(Palette.WOUND_EDGE, 0.8)));
  }
}
