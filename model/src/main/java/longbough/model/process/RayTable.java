package longbough.model.process;

/**
 * Paths of light through the crown grid, worked out once for all crowns: in a crown scaled to radius 1
 * and height 1, a direction with a given slope crosses the same cells by the same lengths whatever the
 * tree's size. For every cell and direction, the cells crossed and the lengths, as horizontal distance
 * over crown radius (vertical direction: height over crown height).
 *
 * <p>Directions: three slopes times three bearings (outwards, along the ring, through the axis; weights
 * 1/4, 1/2, 1/4 by symmetry) and the vertical.
 */
final class RayTable {
  /** Slopes in the scaled crown: rise in crown heights per crown radius. */
  static final double[] SLOPES = {0.2, 0.7, 1.8};

  static final int BEARINGS = 3;
  static final double[] BEARING_WEIGHTS = {0.25, 0.5, 0.25};
  static final int SLANTED = SLOPES.length * BEARINGS;
  static final int DIRECTIONS = SLANTED + 1;

  private static final double STEP = 1.0 / 64;

  /** Start of each ray's span in {@link #CELL} and {@link #LENGTH}; index direction * CELLS + cell. */
  static final int[] START = new int[DIRECTIONS * CrownLight.CELLS + 1];

  static final int[] CELL;
  static final double[] LENGTH;

  static {
    int[] cells = new int[DIRECTIONS * CrownLight.CELLS * CrownLight.CELLS];
    double[] lengths = new double[cells.length];
    int used = 0;
    double[] sums = new double[CrownLight.CELLS];
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      for (int cell = 0; cell < CrownLight.CELLS; cell++) {
        START[direction * CrownLight.CELLS + cell] = used;
        java.util.Arrays.fill(sums, 0);
        trace(cell, direction, sums);
        for (int crossed = 0; crossed < CrownLight.CELLS; crossed++) {
          if (sums[crossed] > 0) {
            cells[used] = crossed;
            lengths[used++] = sums[crossed];
          }
        }
      }
    }
    START[DIRECTIONS * CrownLight.CELLS] = used;
    CELL = java.util.Arrays.copyOf(cells, used);
    LENGTH = java.util.Arrays.copyOf(lengths, used);
  }

  private RayTable() {}

  private static void trace(int cell, int direction, double[] sums) {
    double x = (cell % CrownLight.RINGS + 0.5) / CrownLight.RINGS;
    double z = (cell / CrownLight.RINGS + 0.5) / CrownLight.LAYERS;
    if (direction == SLANTED) {
      double path = z;
      while (path + STEP / 2 < 1) {
        sums[cellAt(x, path + STEP / 2)] += STEP;
        path += STEP;
      }
      return;
    }
    double slope = SLOPES[direction / BEARINGS];
    int bearing = direction % BEARINGS;
    double cos = 1 - bearing;
    double sin = bearing == 1 ? 1 : 0;
    double step = STEP / 2;
    for (int n = 0; n < 4 / step; n++) {
      double s = (n + 0.5) * step;
      double px = x + s * cos;
      double py = s * sin;
      double radius = Math.sqrt(px * px + py * py);
      double height = z + s * slope;
      if (height >= 1 || (radius >= 1 && (bearing != 2 || px < 0))) {
        return;
      }
      if (radius < 1) {
        sums[cellAt(radius, height)] += step;
      }
    }
  }

  private static int cellAt(double radius, double height) {
    int ring = Math.min(CrownLight.RINGS - 1, (int) (radius * CrownLight.RINGS));
    int layer = Math.min(CrownLight.LAYERS - 1, (int) (height * CrownLight.LAYERS));
    return layer * CrownLight.RINGS + ring;
  }
}
