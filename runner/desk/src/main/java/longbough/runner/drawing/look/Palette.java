package longbough.runner.drawing.look;

import java.util.List;

/**
 * The colours of the drawings. Kinds of thing differ in lightness and in shape as well as in hue,
 * so that they stay apart for colour-blind readers and on a grey printer.
 */
public final class Palette {
  public static final String TEXT = "#262b2a";
  public static final String QUIET_TEXT = "#5a625f";
  public static final String GUIDE = "#d5d9d6";
  public static final String GROUND = "#8a8f82";
  public static final String SOIL = "#efece4";
  public static final String PERSON = "#9aa09e";

  /** Foliage of broadleaves from deep shade to full light. */
  public static final List<String> LEAVES = List.of("#264d3b", "#37684a", "#4f835a", "#78a673");

  /** Foliage of conifers from deep shade to full light. */
  public static final List<String> NEEDLES = List.of("#1d4141", "#2a5652", "#407066", "#648f7f");

  public static final String SPROUT_LEAF = "#c2d350";
  public static final String SPROUT_EDGE = "#7a901f";
  public static final String SPROUT_STEM = "#6f8410";

  public static final String BARK = "#7a6a5c";
  public static final String BARK_SHADE = "#594b40";
  public static final String BARK_LIGHT = "#a39483";
  public static final String DEADWOOD = "#b4b1ad";
  public static final String DEADWOOD_EDGE = "#7d7b79";

  public static final String OPEN_WOUND = "#c4632f";
  public static final String WOUND_EDGE = "#4a2416";
  public static final String WOUNDWOOD = "#e6d2b0";

  public static final String SAPWOOD = "#f3e7cb";
  public static final String HEARTWOOD = "#e0c596";
  public static final String BRANCH = "#d2a768";
  public static final String RING = "#c2a574";
  public static final String DECAY = "#5f4435";
  public static final String DECAY_EDGE = "#36251c";
  public static final String HELD = "#b39274";
  public static final String BARRIER = "#14638f";

  private Palette() {}

  /** Foliage colours of a species, darkest first. */
  public static List<String> foliage(SpeciesLook look) {
    return look.conifer() ? NEEDLES : LEAVES;
  }
}
