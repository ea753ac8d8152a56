package longbough.runner.drawing;

import java.util.List;
import longbough.runner.drawing.scene.Shape;

/** Counts the stamped marks of a scene. */
final class MarkCount {
  int of(List<Shape> shapes) {
    int sum = 0;
    for (Shape shape : shapes) {
      if (shape instanceof Shape.Stamps stamps) {
        sum += stamps.places().size();
      } else if (shape instanceof Shape.Group group) {
        sum += of(group.shapes());
      }
    }
    return sum;
  }
}
