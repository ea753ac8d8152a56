package longbough.runner.drawing.scene;

/**
 * How a shape is painted.
 *
 * @param fill colour as {@code #rrggbb}, or {@link #NONE}
 * @param stroke colour as {@code #rrggbb}, or {@link #NONE}
 * @param strokeWidth units
 * @param opacity of the whole shape, 0 to 1
 * @param dash length of dash and gap in units; 0 for a solid line
 */
public record Style(String fill, String stroke, double strokeWidth, double opacity, double dash) {
  public static final String NONE = "none";

  public Style {
    if (!Double.isFinite(strokeWidth) || !Double.isFinite(opacity) || !Double.isFinite(dash)) {
      throw new IllegalArgumentException("style numbers must be finite");
    }
  }

  public static Style fill(String colour) {
    return new Style(colour, NONE, 0, 1, 0);
  }

  public static Style line(String colour, double width) {
    return new Style(NONE, colour, width, 1, 0);
  }

  public Style edged(String colour, double width) {
    return new Style(fill, colour, width, opacity, dash);
  }

  public Style faint(double share) {
    return new Style(fill, stroke, strokeWidth, share, dash);
  }

  public Style dashed(double length) {
    return new Style(fill, stroke, strokeWidth, opacity, length);
  }
}
