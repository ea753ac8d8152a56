package longbough.runner.yaml;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * A place in a text.
 *
 * @param line from 1, or 0 where there is none
 * @param column from 1, or 0 where there is none
 */
public record Place(int line, int column) {

  /** The file as a whole. */
  public static final Place NONE = new Place(0, 0);

  static Place of(Optional<Mark> mark) {
    return mark.map(at -> new Place(at.getLine() + 1, at.getColumn() + 1)).orElse(NONE);
  }
}
