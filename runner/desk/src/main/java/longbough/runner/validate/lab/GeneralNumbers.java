package longbough.runner.validate.lab;

import java.util.function.Supplier;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.source.ParameterTable;

/**
 * The general parameters that every experiment plays with: those of the files, or others while a
 * fit or a sweep tries them. They hold for the thread that tries them, so that experiments side by
 * side don't meet.
 */
public final class GeneralNumbers {
  private static final ThreadLocal<ParameterTable> TRIED = new ThreadLocal<>();

  private GeneralNumbers() {}

  /** What stands in the files, or is being tried. */
  public static ParameterTable table() {
    ParameterTable tried = TRIED.get();
    return tried == null ? ParameterLibrary.general() : tried;
  }

  /** Plays something with other numbers, on this thread. */
  public static <T> T trying(ParameterTable numbers, Supplier<T> play) {
    ParameterTable before = TRIED.get();
    TRIED.set(numbers);
    try {
      return play.get();
    } finally {
      if (before == null) {
        TRIED.remove();
      } else {
        TRIED.set(before);
      }
    }
  }
}
