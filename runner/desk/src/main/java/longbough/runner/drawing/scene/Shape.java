package longbough.runner.drawing.scene;

import java.util.List;

/** What a scene is made of. */
public sealed interface Shape {

  /** A line or an area. */
  record Path(Outline outline, Style style) implements Shape {}

  /** An ellipse with upright axes. */
  record Ellipse(double x, double y, double radiusX, double radiusY, Style style) implements Shape {
    public Ellipse {
      Outline.tenths(x);
      Outline.tenths(y);
      Outline.tenths(radiusX);
      Outline.tenths(radiusY);
    }
  }

  /** Where the given point lies on a line of text. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** One line of text; y is its baseline, size the height of the type. */
  record Text(
      double x, double y, String words, double size, boolean bold, Anchor anchor, String colour)
      implements Shape {
    public Text {
      Outline.tenths(x);
      Outline.tenths(y);
    }
  }

  /** Shapes that belong together, with a name in words (empty for none). */
  record Group(String name, double opacity, List<Shape> shapes) implements Shape {
    public Group {
      shapes = List.copyOf(shapes);
    }
  }

  /** The same small mark at many places; each place is x, y as {@link Outline#tenths}. */
  record Stamps(Mark mark, List<int[]> places) implements Shape {
    public Stamps {
      places = List.copyOf(places);
    }
  }
}
