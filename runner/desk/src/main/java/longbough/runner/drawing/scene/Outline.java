package longbough.runner.drawing.scene;

import java.util.Arrays;

/**
 * A line or area as moves, straight lines and curves. Coordinates are kept as whole tenths of a
 * unit, so that both writers see the same numbers and relative steps add up exactly.
 */
public final class Outline {
  static final byte MOVE = 'M';
  static final byte LINE = 'L';
  static final byte QUAD = 'Q';
  static final byte CURVE = 'C';
  static final byte CLOSE = 'Z';

  private static final double LARGEST = 1e7;

  private byte[] steps = new byte[16];
  private int[] numbers = new int[32];
  private int stepCount;
  private int numberCount;

  /** Rounds to tenths of a unit; refuses what can't be drawn. */
  public static int tenths(double value) {
    if (!(Math.abs(value) < LARGEST)) {
      throw new IllegalArgumentException("coordinate out of range: " + value);
    }
    return (int) Math.rint(value * 10);
  }

  public Outline move(double x, double y) {
    return add(MOVE, x, y);
  }

  public Outline line(double x, double y) {
    return add(LINE, x, y);
  }

  /** A curve with one control point. */
  public Outline quad(double controlX, double controlY, double x, double y) {
    return add(QUAD, controlX, controlY, x, y);
  }

  /** A curve with two control points. */
  public Outline curve(double x1, double y1, double x2, double y2, double x, double y) {
    return add(CURVE, x1, y1, x2, y2, x, y);
  }

  public Outline close() {
    return add(CLOSE);
  }

  public boolean isEmpty() {
    return stepCount == 0;
  }

  int steps() {
    return stepCount;
  }

  byte step(int index) {
    return steps[index];
  }

  int number(int index) {
    return numbers[index];
  }

  private Outline add(byte step, double... values) {
    if (stepCount == steps.length) {
      steps = Arrays.copyOf(steps, 2 * stepCount);
    }
    if (numberCount + values.length > numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * numbers.length);
    }
    steps[stepCount++] = step;
    for (double value : values) {
      numbers[numberCount++] = tenths(value);
    }
    return this;
  }
}
