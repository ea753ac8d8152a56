package longbough.model.process;

import java.util.Arrays;
import longbough.model.numeric.Fast;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;

/**
 * Light absorbed per leaf area in each cell of the crown, over light on open flat ground.
 *
 * <p>Beer-Lambert along beams from four elevations (three slopes and the vertical):
 *
 * <pre>
 * a_c = k O sum_d b_d mean over the cell of T exp(-K sum_j D_j s_j),   K = k O (1 + w)
 * mean over a stretch of a beam = e^(-t) (1 - e^(-x)) / x
 * b_d = p/(p-1) [sin(e)^(p-1)] over band d
 * </pre>
 *
 * a absorbed per leaf area over horizontal flux (1); k extinction coefficient of the species (1); O
 * clumping (1): leaves that hide each other both let more through and take up less; w optical depth
 * of wood over leaves (1), whose part of the light is lost to the leaves; D leaf area density of
 * cell j (m2 m-3); s path of the beam through it (m); x optical depth of the stretch and t of all
 * between it and the sky (1). Light is the mean over each stretch, not its middle, so that leaves
 * and wood together take up just what the beams lose, and a closed canopy never more than falls on
 * it. T is what neighbours let through ({@link Neighbours}). The flux on flat ground that comes
 * from below elevation e is sin(e)^p of all (p = 2 for an evenly bright sky), so that light from a
 * band onto a leaf that faces it is the integral of dF/sin(e): this is why a free-standing crown
 * earns more than its ground projection (p/(p-1) = 2 for an even sky).
 *
 * <p>Source: Monsi M., Saeki T. 1953; spherical geometry. Assumes a round crown and leaves spread
 * at random within a cell but for their clumping.
 */
public final class LightField {
  private static final int SLOPES = BeamTable.SLOPES.length;

  /** Optical depth of a stretch below which the light in it is even to twelve digits or so. */
  private static final double THIN = 1e-6;

  private final CrownGrid grid = new CrownGrid();
  private final Neighbours neighbours = new Neighbours();
  private final double[] density = new double[CrownLight.CELLS];
  private final double[] bandWeight = new double[SLOPES + 1];
  private final double[] pathScaleM = new double[SLOPES + 1];
  private final double[] sine = new double[SLOPES + 1];
  private final double[] sky = new double[CrownLight.CELLS];
  private final double[] node = new double[BeamTable.mostNodes()];
  private final double[] depth = new double[BeamTable.mostNodes()];
  private final double[] scratch = new double[BeamTable.mostNodes()];

  /** Light in the crown of a tree as it stands. */
  public void compute(
      TreeState state, CrownLight light, ModelParameters parameters, double openness) {
    LightParameters p = parameters.light();
    grid.place(state, light);
    light.allLeafAreaM2 = state.leafAreaM2();
    double crownHeightM = light.topM - light.bottomM;
    density(light, crownHeightM);
    bands(light.radiusM, crownHeightM, p.skyExponent());
    neighbours.stand(state, parameters, openness);
    double k = parameters.species().extinctionCoefficient() * p.clumping();
    Arrays.fill(sky, 0);
    for (int direction = 0; direction < BeamTable.DIRECTIONS; direction++) {
      shine(light, direction, k * (1 + p.woodAreaShare()));
    }
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      light.lightShare[cell] = k * sky[cell];
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
  private void bands(double radiusM, double crownHeightM, double skyExponent) {
    double below = 0;
    double factor = skyExponent / (skyExponent - 1);
    for (int slope = 0; slope <= SLOPES; slope++) {
      double to = 1;
      if (slope < SLOPES) {
        double tan = BeamTable.SLOPES[slope] * crownHeightM / radiusM;
        double next =
            slope + 1 < SLOPES ? BeamTable.SLOPES[slope + 1] : 2 * BeamTable.SLOPES[slope];
        double tanEdge = Math.sqrt(BeamTable.SLOPES[slope] * next) * crownHeightM / radiusM;
        to = tanEdge / Math.sqrt(1 + tanEdge * tanEdge);
        pathScaleM[slope] = radiusM * Math.sqrt(1 + tan * tan);
        sine[slope] = tan / Math.sqrt(1 + tan * tan);
      } else {
        pathScaleM[slope] = crownHeightM;
        sine[slope] = 1;
      }
      double upTo = Fast.pow(to, skyExponent - 1);
      bandWeight[slope] = factor * (upTo - below);
      below = upTo;
    }
  }

  /** Adds the light that comes from one direction. */
  private void shine(CrownLight light, int direction, double extinction) {
    BeamTable table = BeamTable.of(direction);
    double scale = extinction * pathScaleM[direction];
    int at = 0;
    for (int beam = 0; beam < table.beams; beam++) {
      double passed = 0;
      for (int i = table.first[beam]; i < table.first[beam + 1]; i++) {
        double x = scale * table.length[i] * density[table.cell[i]];
        node[at] = -passed;
        depth[at++] = x;
        passed += x;
      }
      node[at++] = -passed;
    }
    Fast.exp(node, scratch, at);
    at = 0;
    double heightM = light.topM - light.bottomM;
    for (int beam = 0; beam < table.beams; beam++) {
      double exitM = light.bottomM + table.exitHeight[beam] * heightM;
      double bright =
          bandWeight[direction] * neighbours.passed(exitM, light.radiusM, sine[direction]);
      for (int i = table.first[beam]; i < table.first[beam + 1]; i++) {
        double x = depth[at];
        double mean = x > THIN ? (node[at] - node[at + 1]) / x : node[at] * (1 - x / 2);
        sky[table.cell[i]] += bright * table.share[i] * mean;
        at++;
      }
      at++;
    }
  }
}
