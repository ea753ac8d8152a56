package longbough.runner.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The label at the end of a line, moved up or down as far as needed to keep clear of the others.
 *
 * @param line the line it belongs to
 * @param text its lines: the name, then the last value
 * @param wantedY middle of the label if it stood alone
 * @param y middle of the label
 */
record EndLabel(Line line, List<String> text, double wantedY, double y) {
  static final double LINE_HEIGHT = 15.5;
  private static final double GAP = 5;

  double height() {
    return text.size() * LINE_HEIGHT + GAP;
  }

  /** Labels within the given span, nearest to where they belong and in the order of the lines. */
  static List<EndLabel> placed(LineChart chart, double top, double bottom) {
    List<EndLabel> labels = labels(chart, top, bottom, false);
    if (height(labels) > bottom - top) {
      labels = labels(chart, top, bottom, true);
    }
    labels.sort(Comparator.comparingDouble(EndLabel::wantedY));
    return spread(labels, top, bottom);
  }

  private static List<EndLabel> labels(LineChart chart, double top, double bottom, boolean brief) {
    List<EndLabel> labels = new ArrayList<>();
    for (Line line : chart.lines()) {
      double value = line.middle()[line.lastYear()];
      double wanted = bottom - (bottom - top) * Math.min(1, value / chart.scale().high());
      labels.add(new EndLabel(line, text(line.name(), chart.text(value), brief), wanted, wanted));
    }
    return labels;
  }

  private static List<String> text(String name, String value, boolean brief) {
    List<String> text = new ArrayList<>(ChartText.wrapped(name));
    if (brief) {
      return List.of(ChartText.cut(name) + " " + value);
    }
    text.add(value);
    return List.copyOf(text);
  }

  // Labels that would touch form a block, which stands where the mean of their wishes is.
  private static List<EndLabel> spread(List<EndLabel> labels, double top, double bottom) {
    List<List<EndLabel>> blocks = new ArrayList<>();
    for (EndLabel label : labels) {
      List<EndLabel> block = new ArrayList<>(List.of(label));
      while (!blocks.isEmpty()) {
        List<EndLabel> above = blocks.get(blocks.size() - 1);
        if (start(above, top, bottom) + height(above) <= start(block, top, bottom)) {
          break;
        }
        blocks.remove(blocks.size() - 1);
        above.addAll(block);
        block = above;
      }
      blocks.add(block);
    }
    List<EndLabel> placed = new ArrayList<>();
    for (List<EndLabel> block : blocks) {
      double at = start(block, top, bottom);
      for (EndLabel label : block) {
        placed.add(new EndLabel(label.line, label.text, label.wantedY, at + label.height() / 2));
        at += label.height();
      }
    }
    return placed;
  }

  private static double height(List<EndLabel> block) {
    return block.stream().mapToDouble(EndLabel::height).sum();
  }

  private static double start(List<EndLabel> block, double top, double bottom) {
    double wished = 0;
    double before = 0;
    for (EndLabel label : block) {
      wished += label.wantedY - label.height() / 2 - before;
      before += label.height();
    }
    double room = GAP + LINE_HEIGHT;
    double start = wished / block.size();
    return Math.max(top - room, Math.min(start, bottom + room - before));
  }
}
