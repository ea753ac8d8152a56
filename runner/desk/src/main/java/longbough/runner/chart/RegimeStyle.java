package longbough.runner.chart;

import java.util.List;

/**
 * How one regime looks in every chart: a colour that stays apart for colour-blind readers and is
 * dark enough for text on white (contrast at least 4.5), and as second cues a dash and a mark.
 *
 * @param colour as #rrggbb
 * @param dash lengths of stroke and gap; empty for a full line
 * @param mark shape of the mark at a visit
 */
public record RegimeStyle(String colour, List<Integer> dash, Mark mark) {

  /** Shape of a mark. */
  public enum Mark {
    CIRCLE,
    SQUARE,
    TRIANGLE,
    DIAMOND,
    TRIANGLE_DOWN,
    CROSS
  }

  private static final List<String> COLOURS =
      List.of("#0b5fa5", "#c2500a", "#12806a", "#8a2f78", "#3d3d3d", "#8f7300");
  private static final List<List<Integer>> DASHES =
      List.of(
          List.of(),
          List.of(10, 3),
          List.of(3, 3),
          List.of(10, 3, 3, 3),
          List.of(6, 6),
          List.of(14, 5));

  /** The style of the regime with that index. */
  public static RegimeStyle of(int regime) {
    int round = regime / COLOURS.size();
    int index = regime % COLOURS.size();
    return new RegimeStyle(
        COLOURS.get(index),
        DASHES.get((index + round) % DASHES.size()),
        Mark.values()[(index + round) % Mark.values().length]);
  }

  /** The colour's red, green and blue as one number. */
  int rgb() {
    return Integer.parseInt(colour.substring(1), 16);
  }
}
