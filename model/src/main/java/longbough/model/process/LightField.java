package longbough.model.process;

import java.util.Arrays;
import longbough.model.numeric.Fast;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;

/**
 * Light absorbed per leaf area in each cell of the crown, over light on open flat ground.
 *
 * <p>Beer-Lambert along ten directions (three slopes by three bearings, and the vertical):
 *
 * <pre>
 * a_c = k sum_d b_d exp(-k O (1 + w) sum_j D_j s_cdj),   b_d = p/(p-1) [sin(e)^(p-1)] over band d
 * </pre>
 *
 * a absorbed per leaf area over horizontal flux (1); k extinction coefficient of the species (1); O
 * clumping (1); w optical depth of wood over leaves (1); D leaf area density of cell j (m2 m-3); s
 * path from cell c to the sky through cell j (m). The flux on flat ground that comes from below
 * elevation e is sin(e)^p of all (p = 2 for an evenly bright sky), so that light from a band onto a
 * leaf that faces it is the integral of dF/sin(e): this is why a free-standing crown earns more
 * than its ground projection (p/(p-1) = 2 for an even sky). Neighbours and walls take away low
 * bands by the site's openness.
 *
 * <p>Source: Monsi M., Saeki T. 1953; spherical geometry. Assumes a round crown and leaves spread
 * at random within a cell.
 */
public final class LightField {
  private static final int SLOPES = RayTable.SLOPES.length;

  private final CrownGrid grid = new CrownGrid();
  private final double[] density = new double[CrownLight.CELLS];
  private final double[] bandWeight = new double[SLOPES + 1];
  private final double[] pathScaleM = new double[SLOPES + 1];
  private final double[] ray = new double[RayTable.RAYS];
  private final double[] scratch = new double[RayTable.RAYS];

  /** Light in the crown of a tree as it stands. */
  public void compute(
      TreeState state, CrownLight light, ModelParameters parameters, double openness) {
    LightParameters p = parameters.light();
    grid.place(state, light);
    light.allLeafAreaM2 = state.leafAreaM2();
    double crownHeightM = light.topM - light.bottomM;
    density(light, crownHeightM);
    bands(light.radiusM, crownHeightM, p.skyExponent(), openness);
    double k = parameters.species().extinctionCoefficient();
    double depth = k * p.clumping() * (1 + p.woodAreaShare());
    passed(depth);
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      light.lightShare[cell] = k * sky(cell * RayTable.DIRECTIONS);
      light.capacityShare[cell] =
          Foliage.capacityShare(parameters.carbon(), light.lightShare[cell]);
    }
  }

  private void density(CrownLight light, double crownHeightM) {
    double layerM = crownHeightM / CrownLight.LAYERS;
    double ringM = light.radiusM / CrownLight.RINGS;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      int ring = cell % CrownLight.RINGS;
      double volume = Math.PI * ringM * ringM * (2 * ring + 1) * layerM;
      density[cell] = light.leafAreaM2[cell] / volume;
    }
  }

  /** Elevations of the slopes in this crown, their bands of sky, and metres a scaled length. */
  private void bands(double radiusM, double crownHeightM, double skyExponent, double openness) {
    double from = 0;
    double below = 0;
    double factor = skyExponent / (skyExponent - 1);
    for (int slope = 0; slope <= SLOPES; slope++) {
      double to = 1;
      if (slope < SLOPES) {
        double tan = RayTable.SLOPES[slope] * crownHeightM / radiusM;
        double next = slope + 1 < SLOPES ? RayTable.SLOPES[slope + 1] : 2 * RayTable.SLOPES[slope];
        double tanEdge = Math.sqrt(RayTable.SLOPES[slope] * next) * crownHeightM / radiusM;
        to = tanEdge / Math.sqrt(1 + tanEdge * tanEdge);
        pathScaleM[slope] = radiusM * Math.sqrt(1 + tan * tan);
      } else {
        pathScaleM[slope] = crownHeightM;
      }
      double upTo = Fast.pow(to, skyExponent - 1);
      double middle = (from + to) / 2;
      bandWeight[slope] = factor * (upTo - below) * (openness + (1 - openness) * middle * middle);
      below = upTo;
      from = to;
    }
  }

  /** Fills the share of light that comes through along each ray. */
  private void passed(double depth) {
    Arrays.fill(ray, 0);
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      if (density[cell] > 0) {
        addPaths(density[cell], RayTable.LENGTH[cell]);
      }
    }
    for (int first = 0; first < RayTable.RAYS; first += RayTable.DIRECTIONS) {
      for (int direction = 0; direction < RayTable.DIRECTIONS; direction++) {
        double scaleM = pathScaleM[direction / RayTable.BEARINGS];
        ray[first + direction] = -depth * ray[first + direction] * scaleM;
      }
    }
    Fast.exp(ray, scratch, RayTable.RAYS);
  }

  private void addPaths(double cellDensity, double[] length) {
    for (int i = 0; i < length.length; i++) {
      ray[i] += cellDensity * length[i];
    }
  }

  private double sky(int firstRay) {
    double sum = bandWeight[SLOPES] * ray[firstRay + RayTable.SLANTED];
    for (int slope = 0; slope < SLOPES; slope++) {
      double around = 0;
      for (int bearing = 0; bearing < RayTable.BEARINGS; bearing++) {
        around +=
            RayTable.BEARING_WEIGHTS[bearing] * ray[firstRay + slope * RayTable.BEARINGS + bearing];
      }
      sum += bandWeight[slope] * around;
    }
    return sum;
  }
}
