package longbough.runner.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.drawing.look.Label;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.StateWords;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.type.Lines;

/**
 * Low pictures of trees in a row that are set one below the other, all at one scale. They have no
 * title and no legend, and every word on them comes from outside.
 */
public final class StripDrawing {
  private static final double LEFT = 62;
  private static final double RIGHT = Scene.PAGE_WIDTH - 14;
  private static final double TOP = 8;
  private static final double HEADING_BELOW = 30;
  private static final double FACT_BELOW = 50;
  private static final double FOOT = 55;

  /**
   * Height of the trees by the number of strips: five of them are to stand on a page and a half.
   */
  private static final double[] MOST_HEIGHT = {300, 270, 230, 168, 160};

  /** Radius of a mark over the root of its leaf area. */
  private static final double BROADLEAF_SPREAD = 0.72;

  private static final double CONIFER_SPREAD = 0.86;
  private static final double FALLEN = 0.3;
  private static final double PERSON_ROOM_M = 1.2;

  private final SpeciesLook look;
  private final double scale;
  private final double panel;
  private final double heightM;
  private final double groundY;
  private final double clusterM2;
  private final FoliageMarks marks;

  /**
   * One tree of a strip.
   *
   * @param state the tree and its year; its heading stands below it
   * @param fact stands below the heading
   */
  public record Tree(YearState state, String fact) {}

  /** Pictures of these trees, all strips together. */
  public StripDrawing(List<List<Tree>> strips, SpeciesLook look) {
    this.look = look;
    List<YearState> all = strips.stream().flatMap(List::stream).map(Tree::state).toList();
    int most = strips.stream().mapToInt(List::size).max().orElseThrow();
    Extent extent = Extent.of(all);
    heightM = extent.heightM();
    panel = (RIGHT - LEFT) / most;
    double wide = panel / (2 * extent.halfWidthM() + PERSON_ROOM_M / most);
    scale = Math.min(wide, MOST_HEIGHT[Math.min(MOST_HEIGHT.length, strips.size()) - 1] / heightM);
    groundY = Math.ceil(TOP + scale * heightM);
    double cluster = 0;
    for (List<Tree> strip : strips) {
      cluster = Math.max(cluster, LeafSize.clusterM2(strip.stream().map(Tree::state).toList()));
    }
    clusterM2 = cluster;
    double spread = look.conifer() ? CONIFER_SPREAD : BROADLEAF_SPREAD;
    marks = new FoliageMarks(look, scale * spread * Math.sqrt(clusterM2));
  }

  /** One strip. */
  public Scene draw(String title, String description, List<Tree> trees) {
    List<Shape> shapes = new ArrayList<>();
    Ground.paint(LEFT, RIGHT, groundY, scale, heightM, shapes);
    for (int i = 0; i < trees.size(); i++) {
      YearState state = trees.get(i).state();
      double axis = LEFT + (i + 0.5) * panel + (i == 0 ? 0.3 * scale : 0);
      TreePainter tree =
          new TreePainter(state.state(), new View(scale, axis, groundY), look, marks, clusterM2);
      double opacity = StateWords.fallen(state.state()) ? FALLEN : 1;
      shapes.add(new Shape.Group("", opacity, tree.paint()));
      shapes.add(Label.heading(axis, groundY + HEADING_BELOW, state.heading()));
      String fact = String.join("", Lines.of(trees.get(i).fact(), Label.BODY, panel - 6, 1));
      shapes.add(Label.body(axis, groundY + FACT_BELOW, fact, Shape.Anchor.MIDDLE));
    }
    return new Scene(Scene.PAGE_WIDTH, (int) Math.ceil(groundY + FOOT), title, description, shapes);
  }
}
