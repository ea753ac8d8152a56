package longbough.runner.drawing.scene;

import java.util.List;

/**
 * One picture. One unit is 0.17 mm where the picture is printed 170 mm wide and drawn {@link
 * #PAGE_WIDTH} units wide.
 *
 * @param width units, whole number
 * @param height units, whole number
 * @param title short name of the picture
 * @param description what the picture shows, in words and numbers, for those who can't see it
 * @param shapes first painted first
 */
public record Scene(int width, int height, String title, String description, List<Shape> shapes) {
  /** Width of a picture that fills a page's text width. */
  public static final int PAGE_WIDTH = 1000;

  public Scene {
    if (width <= 0 || height <= 0) {
      throw new IllegalArgumentException("a scene needs a width and a height above 0");
    }
    if (title.isBlank() || description.isBlank()) {
      throw new IllegalArgumentException("a scene needs a title and a description");
    }
    shapes = List.copyOf(shapes);
  }
}
