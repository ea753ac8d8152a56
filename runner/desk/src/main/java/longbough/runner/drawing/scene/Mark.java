package longbough.runner.drawing.scene;

import java.util.List;

/**
 * A small drawing about the origin that is repeated at many places, such as a cluster of leaves.
 *
 * @param key unique within a scene; lower-case letters and digits
 * @param paths first painted first
 */
public record Mark(String key, List<Shape.Path> paths) {
  public Mark {
    paths = List.copyOf(paths);
  }
}
