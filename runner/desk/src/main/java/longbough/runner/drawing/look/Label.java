package longbough.runner.drawing.look;

import longbough.runner.drawing.scene.Shape;

/** Type in the few sizes that the drawings use; the smallest prints at 8 point on 170 mm. */
public final class Label {
  public static final double TITLE = 25;
  public static final double HEADING = 19;
  public static final double BODY = 17;

  private static final String NARROW = "fijlrt .,:;'-1I";
  private static final String WIDE = "mwMW%";

  private Label() {}

  public static Shape title(double x, double y, String words) {
    return new Shape.Text(x, y, words, TITLE, true, Shape.Anchor.START, Palette.TEXT);
  }

  public static Shape heading(double x, double y, String words) {
    return new Shape.Text(x, y, words, HEADING, true, Shape.Anchor.MIDDLE, Palette.TEXT);
  }

  public static Shape body(double x, double y, String words, Shape.Anchor anchor) {
    return new Shape.Text(x, y, words, BODY, false, anchor, Palette.TEXT);
  }

  public static Shape quiet(double x, double y, String words, Shape.Anchor anchor) {
    return new Shape.Text(x, y, words, BODY, false, anchor, Palette.QUIET_TEXT);
  }

  /** Rough width of a line of body type, for spacing; errs on the wide side. */
  public static double widthOf(String words) {
    double width = 0;
    for (int i = 0; i < words.length(); i++) {
      char letter = words.charAt(i);
      boolean narrow = NARROW.indexOf(letter) >= 0;
      width += narrow ? 0.34 : WIDE.indexOf(letter) >= 0 ? 0.92 : 0.6;
    }
    return BODY * width;
  }
}
