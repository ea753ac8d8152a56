package longbough.runner.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.LimbStatus;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.Label;
import longbough.runner.drawing.look.ScaleBar;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.StateWords;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.type.Lines;

/** The trees of one regime side by side, at one scale, over a common ground line. */
public final class ElevationDrawing {
  private static final double LEFT = 62;
  private static final double RIGHT = Scene.PAGE_WIDTH - 14;
  private static final double TOP = 84;
  private static final double MOST_HEIGHT = 560;
  private static final double HEADING_BELOW = 34;
  private static final double FACT_LINE = 23;
  private static final double HEADING_LINE = 22;
  private static final int HEADING_LINES = 3;

  /** Radius of a mark over the root of its leaf area. */
  private static final double BROADLEAF_SPREAD = 0.72;

  private static final double CONIFER_SPREAD = 0.86;
  private static final double FALLEN = 0.3;
  private static final double PERSON_ROOM_M = 1.2;

  private final String title;
  private final List<YearState> years;
  private final SpeciesLook look;
  private final View[] views;
  private final double scale;
  private final double groundY;
  private final double heightM;
  private final double clusterM2;
  private final FoliageMarks marks;
  private final List<Shape> shapes = new ArrayList<>();

  private ElevationDrawing(String title, List<YearState> years, SpeciesLook look) {
    this.title = title;
    this.years = years;
    this.look = look;
    Extent extent = Extent.of(years);
    heightM = extent.heightM();
    double panel = panel();
    double wide = panel / (2 * extent.halfWidthM() + PERSON_ROOM_M / years.size());
    scale = Math.min(wide, MOST_HEIGHT / heightM);
    groundY = Math.ceil(TOP + scale * heightM);
    clusterM2 = LeafSize.clusterM2(years);
    double spread = look.conifer() ? CONIFER_SPREAD : BROADLEAF_SPREAD;
    marks = new FoliageMarks(look, scale * spread * Math.sqrt(clusterM2));
    views = new View[years.size()];
    for (int i = 0; i < views.length; i++) {
      views[i] = new View(scale, LEFT + (i + 0.5) * panel + (i == 0 ? 0.3 * scale : 0), groundY);
    }
  }

  /** A picture of the given years, first to last from left to right. */
  public static Scene draw(String title, List<YearState> years, SpeciesLook look) {
    if (years.isEmpty()) {
      throw new IllegalArgumentException("a drawing needs at least one year");
    }
    return new ElevationDrawing(title, List.copyOf(years), look).scene();
  }

  private Scene scene() {
    shapes.add(Label.title(14, 34, title));
    String view = look.name() + ", seen from the south, all at one scale";
    shapes.add(Label.quiet(14, 60, view, Shape.Anchor.START));
    Ground.paint(LEFT, RIGHT, groundY, scale, heightM, shapes);
    double barM = ScaleBar.roundLength(160 / scale);
    String bar = Words.brief(barM).replace(".0", "") + " m";
    shapes.addAll(ScaleBar.draw(RIGHT - scale * barM - 6, 58, scale * barM, bar));
    Shown shown = new Shown();
    for (int i = 0; i < years.size(); i++) {
      YearState year = years.get(i);
      TreePainter tree = new TreePainter(year.state(), views[i], look, marks, clusterM2);
      double opacity = StateWords.fallen(year.state()) ? FALLEN : 1;
      shapes.add(new Shape.Group(StateWords.sentence(year), opacity, tree.paint()));
      tree.note(shown);
      below(year, views[i].axisX());
    }
    double legendTop = groundY + HEADING_BELOW + headingRoom() + FACT_LINE * (lines() + 1);
    double height =
        new ElevationLegend(years, marks, clusterM2, shown).paint(14, RIGHT, legendTop, shapes);
    int total = (int) Math.ceil(legendTop + height + 14);
    return new Scene(Scene.PAGE_WIDTH, total, title, description(), shapes);
  }

  private void below(YearState year, double x) {
    double y = groundY + HEADING_BELOW;
    for (String line : headingLines(year)) {
      shapes.add(Label.heading(x, y, line));
      y += HEADING_LINE;
    }
    y = groundY + HEADING_BELOW + headingRoom();
    for (String line : facts(year.state())) {
      y += FACT_LINE;
      shapes.add(Label.body(x, y, line, Shape.Anchor.MIDDLE));
    }
    String aside = aside(year.state());
    if (!aside.isEmpty()) {
      shapes.add(Label.quiet(x, y + FACT_LINE, aside, Shape.Anchor.MIDDLE));
    }
  }

  /** Size and leaf in one line, or in two where the trees stand close. */
  private List<String> facts(TreeState state) {
    if (!state.vitality.alive) {
      return List.of(StateWords.fate(state));
    }
    String height = Words.oneDecimal(state.heightM()) + " m";
    String leaf = Words.brief(state.leafAreaM2()) + " m² leaf";
    String both = height + ", " + leaf;
    return Label.widthOf(both) <= panel() ? List.of(both) : List.of(height + " tall", leaf);
  }

  private static String aside(TreeState state) {
    return state.vitality.alive ? extra(state) : StateWords.cause(state);
  }

  private double panel() {
    return (RIGHT - LEFT) / years.size();
  }

  /** Lines of facts under the tree that has most of them. */
  private int lines() {
    return years.stream()
        .mapToInt(year -> facts(year.state()).size() + (aside(year.state()).isEmpty() ? 0 : 1))
        .max()
        .orElse(1);
  }

  private List<String> headingLines(YearState year) {
    return Lines.of(year.heading(), Label.HEADING, panel() - 8, HEADING_LINES);
  }

  /** What the headings need beyond one line. */
  private double headingRoom() {
    int most = years.stream().mapToInt(year -> headingLines(year).size()).max().orElse(1);
    return HEADING_LINE * Math.max(0, most - 1);
  }

  private static String extra(TreeState state) {
    double sprouts = state.sprouts.leafAreaM2();
    if (state.vitality.alive && sprouts >= 0.05) {
      return Words.brief(sprouts) + " m² on sprouts";
    }
    int dead = StateWords.limbs(state, LimbStatus.DEAD);
    return dead == 0 ? "" : dead + (dead == 1 ? " dead limb" : " dead limbs");
  }

  private String description() {
    StringBuilder words = new StringBuilder("Side view of a ").append(look.name());
    words.append(" from the south at one scale, from left to right.");
    years.forEach(year -> words.append(' ').append(StateWords.sentence(year)));
    return words.toString();
  }
}
