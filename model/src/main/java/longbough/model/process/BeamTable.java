package longbough.model.process;

import java.util.Arrays;

/**
 * Beams of light through the crown grid, worked out once for all crowns: in a crown scaled to
 * radius 1 and height 1, a direction with a given slope crosses the same cells by the same lengths
 * whatever the tree's size. Lengths are horizontal distances over crown radius (vertical direction:
 * height over crown height).
 *
 * <p>Each direction has a set of parallel beams, evenly spaced beside and above each other, so that
 * every cell is crossed by some. A beam is cut into its stretches within single cells, from the sky
 * downwards. Stretches are stretched or shortened by the few per cent that make those of a cell,
 * times the beams' spacing, fill just the cell's volume: then sparse leaves get exactly the open
 * light, and what a beam loses is exactly what the cells on it take up.
 */
final class BeamTable {
  /**
   * Slopes in the scaled crown: rise in crown heights per crown radius; the vertical comes last.
   */
  static final double[] SLOPES = {0.2, 0.7, 1.8};

  static final int DIRECTIONS = SLOPES.length + 1;

  private static final BeamTable[] TABLES = new BeamTable[DIRECTIONS];

  /** Height between beams of a direction; about what the slope rises within a ring. */
  private static final double[] SPACING = {1.0 / 8, 3.0 / 16, 1.0 / 4};

  /** Beams side by side from the axis to the rim: one for the middle of each ring. */
  private static final int ACROSS = CrownLight.RINGS;

  private static final double STEP = 1.0 / 1024;

  /** Beams of the direction. */
  final int beams;

  /** First stretch of each beam, and the number of all stretches after the last. */
  final int[] first;

  /** Where each beam leaves the cylinder round the crown: height over crown height, may pass 1. */
  final double[] exitHeight;

  /** The cell of each stretch. */
  final int[] cell;

  final double[] length;

  /** Share of the cell's volume that a stretch stands for. */
  final double[] share;

  static {
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      TABLES[direction] = new BeamTable(direction);
    }
  }

  /** Longest list of beam ends of any direction: stretches and one more for each beam. */
  static int mostNodes() {
    return Arrays.stream(TABLES).mapToInt(t -> t.cell.length + t.beams).max().orElseThrow();
  }

  static int mostBeams() {
    return Arrays.stream(TABLES).mapToInt(t -> t.beams).max().orElseThrow();
  }

  static BeamTable of(int direction) {
    return TABLES[direction];
  }

  private BeamTable(int direction) {
    boolean vertical = direction == SLOPES.length;
    Trace trace = new Trace();
    if (vertical) {
      for (int ring = 0; ring < CrownLight.RINGS; ring++) {
        trace.straightDown(ring);
      }
    } else {
      double slope = SLOPES[direction];
      int rows = (int) Math.ceil((1 + 2 * slope) / SPACING[direction]);
      for (int across = 0; across < ACROSS; across++) {
        double y = (across + 0.5) / ACROSS;
        for (int row = 0; row < rows; row++) {
          trace.slanted(slope, y, -slope + (row + 0.5) * (1 + 2 * slope) / rows);
        }
      }
    }
    beams = trace.beams;
    first = Arrays.copyOf(trace.first, beams + 1);
    exitHeight = Arrays.copyOf(trace.exitHeight, beams);
    cell = Arrays.copyOf(trace.cell, trace.stretches);
    length = Arrays.copyOf(trace.length, trace.stretches);
    share = new double[trace.stretches];
    double spacing = vertical ? 0 : 2.0 / ACROSS * spacing(direction);
    double[] sums = new double[CrownLight.CELLS];
    for (int i = 0; i < cell.length; i++) {
      sums[cell[i]] += length[i];
    }
    for (int i = 0; i < cell.length; i++) {
      share[i] = length[i] / sums[cell[i]];
      if (!vertical) {
        length[i] *= volume(cell[i]) / (sums[cell[i]] * spacing);
      }
    }
  }

  private static double spacing(int direction) {
    double span = 1 + 2 * SLOPES[direction];
    return span / Math.ceil(span / SPACING[direction]);
  }

  /** Volume of a cell in the scaled crown. */
  private static double volume(int cell) {
    return Math.PI
        * (2 * (cell % CrownLight.RINGS) + 1)
        / (CrownLight.RINGS * CrownLight.RINGS * CrownLight.LAYERS);
  }

  private static int cellAt(double radius, double height) {
    int ring = Math.min(CrownLight.RINGS - 1, (int) (radius * CrownLight.RINGS));
    int layer = Math.min(CrownLight.LAYERS - 1, (int) (height * CrownLight.LAYERS));
    return layer * CrownLight.RINGS + ring;
  }

  /** Lists of the beams and stretches found so far. */
  private static final class Trace {
    private static final int MOST = 4096;

    private int beams;
    private int stretches;
    private final int[] first = new int[MOST];
    private final double[] exitHeight = new double[MOST];
    private final int[] cell = new int[MOST];
    private final double[] length = new double[MOST];

    private void straightDown(int ring) {
      for (int layer = CrownLight.LAYERS - 1; layer >= 0; layer--) {
        cell[stretches] = layer * CrownLight.RINGS + ring;
        length[stretches++] = 1.0 / CrownLight.LAYERS;
      }
      exitHeight[beams] = Double.POSITIVE_INFINITY;
      first[++beams] = stretches;
    }

    /** A beam at y beside the axis that passes it at a height. */
    private void slanted(double slope, double y, double heightAtAxis) {
      int from = stretches;
      double rim = Math.sqrt(1 - y * y);
      int steps = (int) Math.ceil(2 * rim / STEP);
      double step = 2 * rim / steps;
      int last = -1;
      for (int n = 0; n < steps; n++) {
        double x = rim - (n + 0.5) * step;
        double z = heightAtAxis + slope * x;
        if (z < 0 || z >= 1) {
          continue;
        }
        int at = cellAt(Math.sqrt(x * x + y * y), z);
        if (at != last) {
          cell[stretches] = at;
          length[stretches++] = 0;
          last = at;
        }
        length[stretches - 1] += step;
      }
      if (stretches > from) {
        exitHeight[beams] = heightAtAxis + slope * rim;
        first[++beams] = stretches;
      }
    }
  }
}
