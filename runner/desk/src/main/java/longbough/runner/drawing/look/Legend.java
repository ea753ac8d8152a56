package longbough.runner.drawing.look;

import java.util.ArrayList;
import java.util.List;
import longbough.runner.drawing.scene.Shape;

/** A line or two of samples with their names, only for what a picture really shows. */
public final class Legend {
  private static final double SAMPLE = 34;
  private static final double GAP = 22;
  private static final double LINE = 27;

  /** One sample and its name. */
  public record Entry(String name, Sample sample) {}

  /** Draws a sample about a centre, at most 28 wide and 18 high. */
  public interface Sample {
    List<Shape> at(double x, double y);
  }

  private final List<Entry> entries = new ArrayList<>();

  public Legend add(boolean shown, String name, Sample sample) {
    if (shown) {
      entries.add(new Entry(name, sample));
    }
    return this;
  }

  /** Height that the legend takes on a page of the given width. */
  public double height(double left, double right) {
    double[] at = {left, LINE};
    entries.forEach(entry -> advance(entry, left, right, at));
    return entries.isEmpty() ? 0 : at[1];
  }

  /** Paints the entries from left to right, going on below where a line is full. */
  public void paint(double left, double right, double top, List<Shape> onto) {
    double[] at = {left, LINE};
    for (Entry entry : entries) {
      double x = advance(entry, left, right, at);
      double y = top + at[1] - LINE / 2;
      onto.addAll(entry.sample().at(x + SAMPLE / 2, y));
      onto.add(Label.body(x + SAMPLE + 6, y + 6, entry.name(), Shape.Anchor.START));
    }
  }

  private static double advance(Entry entry, double left, double right, double[] at) {
    double width = SAMPLE + 6 + Label.widthOf(entry.name());
    if (at[0] > left && at[0] + width > right) {
      at[0] = left;
      at[1] += LINE;
    }
    double x = at[0];
    at[0] += width + GAP;
    return x;
  }
}
