package longbough.runner.validate.lab;

import java.util.function.IntToDoubleFunction;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.process.CrownLight;
import longbough.model.process.LightField;
import longbough.model.state.TreeState;

/**
 * A crown whose every light cell holds just the leaf area that is wanted, lit by the model's own
 * light: a flat wide one stands for a closed canopy, a ball for a free-standing crown.
 */
public final class BoxCrown {
  /** So high a power that all light comes from straight above. */
  public static final double ZENITH = 1e9;

  private static final double BASE_M = 2;
  private static final double WIDE_M = 1e5;
  private static final double FLAT_HEIGHT_M = 4;
  private static final int FINE = 40;

  public final CrownLight light = new CrownLight();
  private final double shadowM2;

  private BoxCrown(
      double radiusM, double heightM, ModelParameters parameters, IntToDoubleFunction leafAreaM2) {
    TreeState state = new TreeState();
    state.trunk.heightM = BASE_M + heightM;
    light.bottomM = BASE_M;
    light.topM = BASE_M + heightM;
    light.radiusM = radiusM;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      light.leafAreaM2[cell] = leafAreaM2.applyAsDouble(cell);
    }
    new LightField().spread(state, light, parameters, 1);
    shadowM2 = Math.PI * radiusM * radiusM;
  }

  /** A horizontally uniform canopy of a leaf area index, m2/m2. */
  public static BoxCrown flat(double leafIndex, ModelParameters parameters) {
    double ground = Math.PI * WIDE_M * WIDE_M;
    return new BoxCrown(
        WIDE_M, FLAT_HEIGHT_M, parameters, cell -> leafIndex * ground * volumeShare(cell));
  }

  /** A ball of even leaf density whose leaf area is so much of its shadow, m2/m2. */
  public static BoxCrown ball(double radiusM, double leafIndex, ModelParameters parameters) {
    double sum = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      sum += volumeShare(cell) * ballShare(cell);
    }
    double leaf = leafIndex * Math.PI * radiusM * radiusM / sum;
    return new BoxCrown(
        radiusM, 2 * radiusM, parameters, cell -> leaf * volumeShare(cell) * ballShare(cell));
  }

  /** A species' parameters under another sky, clumping and share of wood. */
  public static ModelParameters parameters(Lab lab, LightParameters light) {
    ModelParameters p = lab.meanParameters();
    return new ModelParameters(
        p.species(),
        light,
        p.carbon(),
        p.reserve(),
        p.allocation(),
        p.sprout(),
        p.shedding(),
        p.wound(),
        p.decay(),
        p.strength(),
        p.decline(),
        p.survival(),
        p.weather(),
        p.root(),
        p.pruning(),
        p.crew(),
        p.limit());
  }

  /** Light that all leaves absorb over what falls on the crown's shadow under a high sun. */
  public double caughtShare() {
    double sum = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      sum += light.leafAreaM2[cell] * light.lightShare[cell];
    }
    return sum / shadowM2;
  }

  /**
   * Light from straight above that comes through the whole of a flat canopy: from the mean light in
   * its two lowest layers, which fall off alike.
   */
  public double passedShare(ModelParameters p) {
    double lowest = light.lightShare[0];
    double depth = Math.log(light.lightShare[CrownLight.RINGS] / lowest);
    double absorbed = p.species().extinctionCoefficient() * p.light().clumping();
    return lowest / absorbed * depth / Math.expm1(depth);
  }

  /** Volume of a cell over the volume of the cylinder that holds the grid. */
  private static double volumeShare(int cell) {
    return (2 * (cell % CrownLight.RINGS) + 1)
        / (double) (CrownLight.RINGS * CrownLight.RINGS * CrownLight.LAYERS);
  }

  /** Share of a cell's volume that lies within the ball which fills the grid, by fine points. */
  private static double ballShare(int cell) {
    double in = 0;
    double all = 0;
    for (int i = 0; i < FINE; i++) {
      double r = (cell % CrownLight.RINGS + (i + 0.5) / FINE) / CrownLight.RINGS;
      for (int j = 0; j < FINE; j++) {
        double z = 2 * (cell / CrownLight.RINGS + (j + 0.5) / FINE) / CrownLight.LAYERS - 1;
        all += r;
        in += r * r + z * z < 1 ? r : 0;
      }
    }
    return in / all;
  }
}
