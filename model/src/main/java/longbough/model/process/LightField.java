package longbough.model.process;

import java.util.Arrays;
import longbough.model.numeric.Fast;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;

/**
 * Light absorbed per leaf area in each cell of the crown, over light on open flat ground.
 *
 * <p>Beer-Lambert along beams from four elevations, the same for every tree:
 *
 * <pre>
 * a_c = k O sum_d b_d mean over the cell of T exp(-K sum_j D_j s_j),   K = k O (1 + w)
 * mean over a stretch of a beam = e^(-t) (1 - e^(-x)) / x
 * sin(e_d)^(p-1) = g_d,   b_d = p/(p-1) w_d
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
 * band onto a leaf that faces it is the integral of dF/sin(e), and all of it p/(p-1): this is why a
 * free-standing crown earns more than its ground projection (2 times for an even sky). Of that, the
 * share sin(e)^(p-1) comes from below e; g and w are points and weights of Gauss and Legendre's
 * rule over this share, so that the elevations lie where the light comes from.
 *
 * <p>Source: Monsi M., Saeki T. 1953; spherical geometry. Assumes a round crown and leaves spread
 * at random within a cell but for their clumping.
 */
public final class LightField {
  /** Points and weights of Gauss and Legendre's rule from 0 to 1, by share of the light below. */
  private static final double[] FLUX_NODES = {
    0.06943184420297371, 0.33000947820757187, 0.6699905217924281, 0.9305681557970262
  };

  private static final double[] FLUX_WEIGHTS = {
    0.17392742256872679, 0.3260725774312732, 0.3260725774312732, 0.17392742256872679
  };

  private static final int DIRECTIONS = FLUX_NODES.length;

  /** Optical depth of a stretch below which the light in it is even to twelve digits or so. */
  private static final double THIN = 1e-6;

  private final CrownGrid grid = new CrownGrid();
  private final Neighbours neighbours = new Neighbours();
  private final double[] density = new double[CrownLight.CELLS];
  private final double[] bandWeight = new double[DIRECTIONS];
  private final BeamTable[] table = new BeamTable[DIRECTIONS];
  private final double[] pathScaleM = new double[DIRECTIONS];
  private final double[] sine = new double[DIRECTIONS];
  private final double[] sky = new double[CrownLight.CELLS];
  private final double[] node = new double[BeamTable.MOST_NODES];
  private final double[] depth = new double[BeamTable.MOST_NODES];
  private final double[] scratch = new double[BeamTable.MOST_NODES];

  /** Light in the crown of a tree as it stands. */
  public void compute(
      TreeState state, CrownLight light, ModelParameters parameters, double openness) {
    grid.place(state, light, Neighbours.reachM(state, parameters.species()));
    light.allLeafAreaM2 = state.leafAreaM2();
    spread(state, light, parameters, openness);
  }

  /**
   * Light in a grid whose bounds and leaf area by cell are set.
   *
   * @param state the tree, for how its neighbours stand
   */
  public void spread(
      TreeState state, CrownLight light, ModelParameters parameters, double openness) {
    LightParameters p = parameters.light();
    double crownHeightM = light.topM - light.bottomM;
    density(light, crownHeightM);
    directions(light.radiusM, crownHeightM, p.skyExponent());
    neighbours.stand(state, parameters, openness);
    double k = parameters.species().extinctionCoefficient() * p.clumping();
    Arrays.fill(sky, 0);
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      shine(light, direction, p.depthOfLeaf(parameters.species()));
    }
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      light.lightShare[cell] = k * sky[cell];
      if (!light.capacityKept) {
        light.capacityShare[cell] = Foliage.capacityShare(parameters, light.lightShare[cell]);
      }
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

  /** Beams of each direction in this crown, their share of the light and metres a scaled length. */
  private void directions(double radiusM, double crownHeightM, double skyExponent) {
    double factor = skyExponent / (skyExponent - 1);
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      double sin = Fast.pow(FLUX_NODES[direction], 1 / (skyExponent - 1));
      double cos = Math.sqrt(1 - sin * sin);
      BeamTable beams = BeamTable.near(sin / cos * radiusM / crownHeightM);
      table[direction] = beams;
      bandWeight[direction] = factor * FLUX_WEIGHTS[direction];
      sine[direction] = beams.vertical ? 1 : sin;
      pathScaleM[direction] = beams.vertical ? crownHeightM : radiusM / cos;
    }
  }

  /** Adds the light that comes from one direction. */
  private void shine(CrownLight light, int direction, double extinction) {
    BeamTable table = this.table[direction];
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
      double gapM = neighbours.gapM(light.radiusM, table.aside[beam]);
      double bright = bandWeight[direction] * neighbours.passed(exitM, gapM, sine[direction]);
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
