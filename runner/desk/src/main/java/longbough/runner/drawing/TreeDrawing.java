package longbough.runner.drawing;

import java.util.List;
import longbough.runner.drawing.elevation.ElevationDrawing;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.section.CrossSectionDrawing;
import longbough.runner.drawing.section.TrunkSectionDrawing;

/** The three drawings of a tree; each shows the given years from left to right at one scale. */
public final class TreeDrawing {
  private TreeDrawing() {}

  /** The tree from the side: limbs, foliage by zone, sprouts, deadwood, wounds. */
  public static Scene elevation(String title, List<YearState> states, SpeciesLook look) {
    return ElevationDrawing.draw(title, states, look);
  }

  /** The trunk cut open lengthwise: decay columns and barrier zones. */
  public static Scene trunkSection(String title, List<YearState> states, SpeciesLook look) {
    return TrunkSectionDrawing.draw(title, states, look);
  }

  /** The trunk cut across at its weakest height: sound wood, decay, thinnest wall. */
  public static Scene crossSections(String title, List<YearState> states, SpeciesLook look) {
    return CrossSectionDrawing.draw(title, states, look);
  }
}
