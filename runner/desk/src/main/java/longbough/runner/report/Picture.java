package longbough.runner.report;

/**
 * A drawing for the report.
 *
 * @param title caption
 * @param svg the drawing as an SVG element; ids must be unique among all pictures
 * @param alternative what it shows, in words
 */
public record Picture(String title, String svg, String alternative) {

  /** The SVG without prologue, ready to stand inside a page. */
  public String element() {
    return svg.substring(Math.max(0, svg.indexOf("<svg")));
  }
}
