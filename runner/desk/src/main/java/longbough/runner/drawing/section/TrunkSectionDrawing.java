package longbough.runner.drawing.section;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.runner.drawing.look.Label;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.look.ScaleBar;
import longbough.runner.drawing.look.SpeciesLook;
import longbough.runner.drawing.look.Words;
import longbough.runner.drawing.look.YearState;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Scene;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/**
 * The trunks of one regime cut open lengthwise, side by side, widths drawn too large; below them
 * the piece about the weakest height, to scale.
 */
public final class TrunkSectionDrawing {
  private static final double LEFT = 62;
  private static final double RIGHT = Scene.PAGE_WIDTH - 14;
  private static final double TOP = 104;
  private static final double TRUNK_HEIGHT = 300;
  private static final double SHARE_OF_PANEL = 0.5;

  private final String title;
  private final List<YearState> years;
  private final SpeciesLook look;
  private final double panel;
  private final double heightM;
  private final double unitsUp;
  private final int widening;
  private final double groundY = TOP + TRUNK_HEIGHT;
  private final List<Shape> shapes = new ArrayList<>();

  private TrunkSectionDrawing(String title, List<YearState> years, SpeciesLook look) {
    this.title = title;
    this.years = years;
    this.look = look;
    panel = (RIGHT - LEFT) / years.size();
    double tallest = 2;
    double thickest = 0.02;
    for (YearState year : years) {
      tallest = Math.max(tallest, year.state().trunk.heightM);
      for (int station = 0; station < year.state().trunk.stations; station++) {
        thickest = Math.max(thickest, year.state().trunk.radiusM[station]);
      }
    }
    heightM = tallest * 1.02;
    unitsUp = TRUNK_HEIGHT / heightM;
    widening = (int) Math.max(1, Math.floor(SHARE_OF_PANEL * panel / (2 * thickest * unitsUp)));
  }

  /** A picture of the given years, first to last from left to right. */
  public static Scene draw(String title, List<YearState> years, SpeciesLook look) {
    if (years.isEmpty()) {
      throw new IllegalArgumentException("a drawing needs at least one year");
    }
    return new TrunkSectionDrawing(title, List.copyOf(years), look).scene();
  }

  private Scene scene() {
    shapes.add(Label.title(14, 34, title));
    shapes.add(Label.quiet(14, 60, subtitle(), Shape.Anchor.START));
    shapes.add(
        Label.quiet(
            14, 82, "wounds of the east side right, of the west side left", Shape.Anchor.START));
    heightLines();
    boolean[] shown = new boolean[SectionLegend.KINDS];
    for (int i = 0; i < years.size(); i++) {
      double x = LEFT + (i + 0.5) * panel;
      TreeState state = years.get(i).state();
      TrunkProfile profile = new TrunkProfile(state, x, groundY, unitsUp, widening * unitsUp);
      List<Shape> trunk = new TrunkSectionPainter(state, profile).paint(shown);
      shapes.add(new Shape.Group(sentence(years.get(i)), 1, trunk));
      below(years.get(i), x);
    }
    widthBar();
    double pieces = new TrunkExcerpts(years).paint(LEFT, RIGHT, groundY + 104, shown, shapes);
    double legendTop = groundY + 98 + pieces;
    double height = new SectionLegend(shown).paint(14, RIGHT, legendTop, shapes);
    int total = (int) Math.ceil(legendTop + height + 14);
    return new Scene(Scene.PAGE_WIDTH, total, title, description(), shapes);
  }

  private String subtitle() {
    String widths =
        widening == 1
            ? "widths and heights to scale"
            : "widths drawn " + widening + " times too large";
    return look.name() + ", trunk cut open lengthwise, " + widths;
  }

  private void widthBar() {
    double units = widening * unitsUp;
    double lengthM = ScaleBar.roundLength(90 / units);
    String words = Words.brief(100 * lengthM) + " cm across";
    shapes.addAll(ScaleBar.draw(RIGHT - units * lengthM - 30, 58, units * lengthM, words));
  }

  private void heightLines() {
    double step = heightM > 12 ? 5 : heightM > 5 ? 2 : 1;
    Outline lines = new Outline();
    for (double height = 0; height <= heightM; height += step) {
      double y = groundY - unitsUp * height;
      lines.move(LEFT - 8, y).line(RIGHT, y);
      String words = Words.whole(height) + " m";
      shapes.add(Label.quiet(LEFT - 14, y + 6, words, Shape.Anchor.END));
    }
    shapes.add(0, new Shape.Path(lines, Style.line(Palette.GUIDE, 0.8)));
  }

  private void below(YearState year, double x) {
    TreeState state = year.state();
    shapes.add(Label.heading(x, groundY + 34, year.heading()));
    shapes.add(Label.body(x, groundY + 57, finding(state), Shape.Anchor.MIDDLE));
    if (state.vitality.worstDecayAreaFraction > 0) {
      String where = "of the section at " + Words.oneDecimal(worstHeightM(state)) + " m";
      shapes.add(Label.quiet(x, groundY + 79, where, Shape.Anchor.MIDDLE));
    }
  }

  private static String finding(TreeState state) {
    double decayed = state.vitality.worstDecayAreaFraction;
    return decayed > 0 ? Words.percent(decayed) + " decayed" : "sound";
  }

  static double worstHeightM(TreeState state) {
    return state.vitality.worstStation * Trunk.STATION_STEP_M;
  }

  private static String sentence(YearState year) {
    TreeState state = year.state();
    StringBuilder words = new StringBuilder(year.heading()).append(": trunk ");
    words.append(Words.oneDecimal(state.trunk.heightM)).append(" m high, ");
    words.append(Words.whole(100 * state.trunk.dbhM())).append(" cm thick at breast height, ");
    words
        .append(TrunkSectionPainter.columns(state))
        .append(" decay columns, at the weakest height ");
    words.append(Words.oneDecimal(worstHeightM(state))).append(" m ");
    return words.append(finding(state)).append('.').toString();
  }

  private String description() {
    StringBuilder words = new StringBuilder("The trunk cut open lengthwise");
    words.append(", widths drawn ").append(widening).append(" times too large. ");
    words.append("Decay stays inside the barrier zone: wood formed after a wound is sound.");
    years.forEach(year -> words.append(' ').append(sentence(year)));
    return words.toString();
  }
}
