package longbough.model.process;

/**
 * Paths of light through the crown grid, worked out once for all crowns: in a crown scaled to
 * radius 1 and height 1, a direction with a given slope crosses the same cells by the same lengths
 * whatever the tree's size. Lengths are horizontal distances over crown radius (vertical direction:
 * height over crown height).
 *
 * <p>Directions: three slopes times three bearings (outwards, along the ring, through the axis;
 * weights 1/4, 1/2, 1/4 by symmetry) and the vertical.
 */
final class RayTable {
  /** Slopes in the scaled crown: rise in crown heights per crown radius. */
  static final double[] SLOPES = {0.2, 0.7, 1.8};

  static final int BEARINGS = 3;
  static final double[] BEARING_WEIGHTS = {0.25, 0.5, 0.25};
  static final int SLANTED = SLOPES.length * BEARINGS;
  static final int DIRECTIONS = SLANTED + 1;
  static final int RAYS = CrownLight.CELLS * DIRECTIONS;

  private static final double STEP = 1.0 / 64;

  /**
   * By cell crossed, the length that each ray runs in it; ray = cell it starts from * DIRECTIONS +
   * direction. Rays only rise, so that each row ends with the rays from its cell's own layer.
   */
  static final double[][] LENGTH = new double[CrownLight.CELLS][];

  static {
    for (int crossed = 0; crossed < CrownLight.CELLS; crossed++) {
      int layer = crossed / CrownLight.RINGS;
      LENGTH[crossed] = new double[(layer + 1) * CrownLight.RINGS * DIRECTIONS];
    }
    double[] sums = new double[CrownLight.CELLS];
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      for (int direction = 0; direction < DIRECTIONS; direction++) {
        java.util.Arrays.fill(sums, 0);
        trace(cell, direction, sums);
        for (int crossed = cell / CrownLight.RINGS * CrownLight.RINGS;
            crossed < CrownLight.CELLS;
            crossed++) {
          LENGTH[crossed][cell * DIRECTIONS + direction] = sums[crossed];
        }
      }
    }
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
