package longbough.model.process;

import java.util.Arrays;
import longbough.model.numeric.Fast;

/**
 * Beams of light through the crown grid, worked out once for all crowns: in a crown scaled to
 * radius 1 and height 1, a direction with a given slope crosses the same cells by the same lengths
 * whatever the tree's size. Lengths are horizontal distances over crown radius (vertical direction:
 * height over crown height).
 *
 * <p>Light comes from fixed directions of the sky, whose slope in the scaled crown differs from
 * tree to tree and from year to year: there is a table for each rung of a ladder of slopes, so
 * close that the next one differs by little from the slope that is wanted; a table is worked out
 * when it is first asked for.
 *
 * <p>Each direction has a set of parallel beams: side by side at the sines of evenly spaced angles,
 * closer towards the rim, where the chord through the crown shortens fast, and evenly spaced above
 * each other. A beam is cut into its stretches within single cells, from the sky downwards.
 * Stretches are stretched or shortened by the few per cent that make those of a cell, times the
 * beams' spacing, fill just the cell's volume: then sparse leaves get exactly the open light, and
 * what a beam loses is exactly what the cells on it take up.
 */
final class BeamTable {
  private static final int RUNGS_PER_OCTAVE = 64;

  /** Slopes up to 2^-5 are taken as level: such a beam rises by half a layer across the crown. */
  private static final int LEAST_OCTAVE = -5;

  /** From 2^5 on they are taken as vertical: such a beam moves by an eighth of a ring. */
  private static final int MOST_OCTAVE = 5;

  private static final int RUNGS = (MOST_OCTAVE - LEAST_OCTAVE) * RUNGS_PER_OCTAVE;
  private static final double LOG_2 = Math.log(2);

  /** Beams side by side from the axis to the rim. */
  private static final int ACROSS = 4;

  /** Beams above each other. */
  private static final int ROWS = 12;

  static final int MOST_BEAMS = ACROSS * ROWS;

  /** A beam crosses each layer's floor and each ring's edge twice at most. */
  private static final int MOST_EDGES = CrownLight.LAYERS + 1 + 2 * CrownLight.RINGS;

  static final int MOST_NODES = MOST_BEAMS * MOST_EDGES;

  // Two threads may fill the same place at once, with tables that are alike.
  private static final BeamTable[] TABLES = new BeamTable[RUNGS + 1];

  /** Beams of the direction. */
  final int beams;

  /** First stretch of each beam, and the number of all stretches after the last. */
  final int[] first;

  /** Where each beam leaves the cylinder round the crown: height over crown height, may pass 1. */
  final double[] exitHeight;

  /** Where it passes beside the axis, over the crown's radius. */
  final double[] aside;

  /** The cell of each stretch. */
  final int[] cell;

  final double[] length;

  /** Share of the cell's volume that a stretch stands for. */
  final double[] share;

  /** Whether the beams fall straight down. */
  final boolean vertical;

  /** The table for beams that rise by so many crown heights per crown radius. */
  static BeamTable near(double slope) {
    int rung = rung(slope);
    BeamTable table = TABLES[rung];
    if (table == null) {
      table = new BeamTable(rung);
      TABLES[rung] = table;
    }
    return table;
  }

  private static int rung(double slope) {
    if (slope >= 1 << MOST_OCTAVE) {
      return RUNGS;
    }
    double octave = Fast.log(slope) / LOG_2 - LEAST_OCTAVE;
    return Math.min(RUNGS, Math.max(0, (int) (octave * RUNGS_PER_OCTAVE + 0.5)));
  }

  private BeamTable(int rung) {
    vertical = rung == RUNGS;
    double slope = StrictMath.pow(2, LEAST_OCTAVE + (double) rung / RUNGS_PER_OCTAVE);
    Trace trace = new Trace();
    if (vertical) {
      for (int ring = 0; ring < CrownLight.RINGS; ring++) {
        trace.straightDown(ring);
      }
    } else {
      double spacing = (1 + 2 * slope) / ROWS;
      for (int across = 0; across < ACROSS; across++) {
        double angle = Math.PI / 2 * (across + 0.5) / ACROSS;
        trace.width = StrictMath.cos(angle) * Math.PI / ACROSS * spacing;
        for (int row = 0; row < ROWS; row++) {
          trace.slanted(slope, StrictMath.sin(angle), -slope + (row + 0.5) * spacing);
        }
      }
    }
    beams = trace.beams;
    first = Arrays.copyOf(trace.first, beams + 1);
    exitHeight = Arrays.copyOf(trace.exitHeight, beams);
    aside = Arrays.copyOf(trace.aside, beams);
    cell = Arrays.copyOf(trace.cell, trace.stretches);
    length = Arrays.copyOf(trace.length, trace.stretches);
    share = new double[trace.stretches];
    for (int i = 0; i < cell.length; i++) {
      share[i] = trace.volume[i] / trace.volumes[cell[i]];
      if (!vertical) {
        length[i] *= volume(cell[i]) / trace.volumes[cell[i]];
      }
    }
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
    private int beams;
    private int stretches;
    private final int[] first = new int[MOST_BEAMS + 1];
    private final double[] exitHeight = new double[MOST_BEAMS];
    private final double[] aside = new double[MOST_BEAMS];
    private final int[] cell = new int[MOST_NODES];
    private final double[] length = new double[MOST_NODES];
    private final double[] volume = new double[MOST_NODES];
    private final double[] volumes = new double[CrownLight.CELLS];
    private final double[] edges = new double[MOST_EDGES];

    /** Area of sky that the beam at hand stands for, seen along the horizon, both sides. */
    private double width = 1;

    private void straightDown(int ring) {
      for (int layer = CrownLight.LAYERS - 1; layer >= 0; layer--) {
        add(layer * CrownLight.RINGS + ring, 1.0 / CrownLight.LAYERS);
      }
      exitHeight[beams] = Double.POSITIVE_INFINITY;
      first[++beams] = stretches;
    }

    private void add(int at, double stretch) {
      cell[stretches] = at;
      length[stretches] = stretch;
      volume[stretches] = stretch * width;
      volumes[at] += volume[stretches++];
    }

    /** A beam at y beside the axis that passes it at a height. */
    private void slanted(double slope, double y, double heightAtAxis) {
      double rim = Math.sqrt(1 - y * y);
      double low = Math.max(-rim, -heightAtAxis / slope);
      double high = Math.min(rim, (1 - heightAtAxis) / slope);
      if (low >= high) {
        return;
      }
      int count = edges(slope, y, heightAtAxis, low, high);
      for (int i = count - 1; i > 0; i--) {
        double stretch = edges[i] - edges[i - 1];
        if (stretch > 0) {
          double x = edges[i] - stretch / 2;
          add(cellAt(Math.sqrt(x * x + y * y), heightAtAxis + slope * x), stretch);
        }
      }
      exitHeight[beams] = heightAtAxis + slope * rim;
      aside[beams] = y;
      first[++beams] = stretches;
    }

    /** Where the beam passes from cell to cell, from its low end to its high one. */
    private int edges(double slope, double y, double heightAtAxis, double low, double high) {
      int count = 0;
      edges[count++] = low;
      edges[count++] = high;
      for (int layer = 1; layer < CrownLight.LAYERS; layer++) {
        double x = ((double) layer / CrownLight.LAYERS - heightAtAxis) / slope;
        if (x > low && x < high) {
          edges[count++] = x;
        }
      }
      for (int ring = 1; ring < CrownLight.RINGS; ring++) {
        double radius = (double) ring / CrownLight.RINGS;
        double x = radius > y ? Math.sqrt(radius * radius - y * y) : high;
        if (x > low && x < high) {
          edges[count++] = x;
        }
        if (-x > low && -x < high) {
          edges[count++] = -x;
        }
      }
      Arrays.sort(edges, 0, count);
      return count;
    }
  }
}
