package longbough.runner.drawing.section;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.runner.drawing.look.Label;
import longbough.runner.drawing.look.ScaleBar;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;

/** The trunk of one regime cut across at its weakest height, years side by side at one scale. */
public final class CrossSectionDrawing {
  private static final double LEFT = 14;
  private static final double RIGHT = Scene.PAGE_WIDTH - 14;
  private static final double TOP = 92;
  private static final double MOST_RADIUS = 118;
  private static final double SHARE_OF_PANEL = 0.42;

  private final String title;
  private final List<YearState> years;
  private final SpeciesLook look;
  private final CutHeight cut;
  private final double panel;
  private final double scale;
  private final double discs;
  private final List<Shape> shapes = new ArrayList<>();

  private CrossSectionDrawing(String title, List<YearState> years, SpeciesLook look) {
    this.title = title;
    this.years = years;
    this.look = look;
    cut = new CutHeight(years);
    panel = (RIGHT - LEFT) / years.size();
    double thickest = 0.02;
    for (YearState year : years) {
      thickest = Math.max(thickest, radiusM(year.state()));
    }
    double radius = Math.min(MOST_RADIUS, SHARE_OF_PANEL * panel);
    scale = radius / thickest;
    discs = 2 * radius;
  }

  /** A picture of the given years, first to last from left to right. */
  public static Scene draw(String title, List<YearState> years, SpeciesLook look) {
    if (years.isEmpty()) {
      throw new IllegalArgumentException("a drawing needs at least one year");
    }
    return new CrossSectionDrawing(title, List.copyOf(years), look).scene();
  }

  private Scene scene() {
    shapes.add(Label.title(LEFT, 34, title));
    String view = look.name() + ", trunk cut across where it is weakest, north up";
    shapes.add(Label.quiet(LEFT, 60, view, Shape.Anchor.START));
    boolean[] shown = new boolean[SectionLegend.KINDS];
    for (int i = 0; i < years.size(); i++) {
      double x = LEFT + (i + 0.5) * panel;
      TreeState state = years.get(i).state();
      List<Shape> disc = disc(state, x, shown);
      shapes.add(new Shape.Group(sentence(years.get(i)), 1, disc));
      below(years.get(i), x);
    }
    scaleBar();
    double legendTop = TOP + discs + 120;
    double height = new SectionLegend(shown).paint(LEFT, RIGHT, legendTop, shapes);
    int total = (int) Math.ceil(legendTop + height + 14);
    return new Scene(Scene.PAGE_WIDTH, total, title, description(), shapes);
  }

  private void scaleBar() {
    double lengthM = ScaleBar.roundLength(90 / scale);
    String words = Words.whole(100 * lengthM) + " cm";
    shapes.addAll(ScaleBar.draw(RIGHT - scale * lengthM - 6, 58, scale * lengthM, words));
  }

  private void below(YearState year, double x) {
    TreeState state = year.state();
    double y = TOP + discs;
    shapes.add(Label.heading(x, y + 34, year.heading()));
    String where = heightWords(state) + " up, radius " + Words.whole(100 * radiusM(state)) + " cm";
    shapes.add(Label.quiet(x, y + 57, where, Shape.Anchor.MIDDLE));
    shapes.add(Label.body(x, y + 79, wall(state), Shape.Anchor.MIDDLE));
    shapes.add(Label.body(x, y + 101, strength(state), Shape.Anchor.MIDDLE));
  }

  private List<Shape> disc(TreeState state, double x, boolean[] shown) {
    int station = cut.station(state);
    return new CrossSectionPainter(state, station, x, TOP + discs / 2, scale).paint(shown);
  }

  private double radiusM(TreeState state) {
    return Math.max(0, state.trunk.radiusM[cut.station(state)]);
  }

  private String heightWords(TreeState state) {
    return Words.oneDecimal(cut.station(state) * Trunk.STATION_STEP_M) + " m";
  }

  private boolean sound(TreeState state) {
    return state.sections.areaFraction[cut.station(state)] <= 0;
  }

  private String wall(TreeState state) {
    double ratio = state.sections.wallRatio[cut.station(state)];
    return sound(state) ? "sound" : "wall t/R " + Words.twoDecimals(ratio);
  }

  private String strength(TreeState state) {
    double loss = state.sections.strengthLoss[cut.station(state)];
    return sound(state) ? "" : "strength lost " + Words.percent(loss);
  }

  private String sentence(YearState year) {
    TreeState state = year.state();
    StringBuilder words = new StringBuilder(year.heading()).append(": at ");
    words.append(heightWords(state)).append(" height, radius ");
    words.append(Words.whole(100 * radiusM(state))).append(" cm, ");
    if (!sound(state)) {
      double decayed = state.sections.areaFraction[cut.station(state)];
      words.append(Words.percent(decayed)).append(" of the section decayed, ");
      words.append(wall(state)).append(", ").append(strength(state)).append('.');
      return words.toString();
    }
    return words.append("sound.").toString();
  }

  private String description() {
    StringBuilder words = new StringBuilder("The trunk of a ").append(look.name());
    words.append(" cut across at its weakest decayed height, all years at one scale, north up.");
    years.forEach(year -> words.append(' ').append(sentence(year)));
    return words.toString();
  }
}
