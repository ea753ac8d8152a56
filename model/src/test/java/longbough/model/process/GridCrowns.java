package longbough.model.process;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import longbough.model.PlayedTrees;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;
import longbough.shared.quantity.Range;
import longbough.shared.source.Basis;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;
import longbough.shared.trait.SpeciesLibrary;

/** Crowns whose every grid cell holds just the leaf area that a test wants. */
final class GridCrowns {
  private static final double BASE_M = 2;

  private GridCrowns() {}

  /** A tree with the grid of its crown. */
  record Crown(TreeState state, CrownLight light) {}

  /** A crown of the given radius and height with so much leaf area in each cell, m2. */
  static Crown crown(double radiusM, double heightM, IntToDoubleFunction leafAreaM2) {
    TreeState state = new TreeState();
    state.trunk.heightM = BASE_M + heightM;
    CrownLight light = new CrownLight();
    light.bottomM = BASE_M;
    light.topM = BASE_M + heightM;
    light.radiusM = radiusM;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      light.leafAreaM2[cell] = leafAreaM2.applyAsDouble(cell);
    }
    return new Crown(state, light);
  }

  /** Volume of a cell over the volume of the cylinder that holds the grid. */
  static double volumeShare(int cell) {
    return (2 * (cell % CrownLight.RINGS) + 1)
        / (double) (CrownLight.RINGS * CrownLight.RINGS * CrownLight.LAYERS);
  }

  /** Share of a cell's volume that lies within the ball which fills the grid, by fine points. */
  static double ballShare(int cell) {
    int fine = 40;
    double in = 0;
    double all = 0;
    for (int i = 0; i < fine; i++) {
      double r = (cell % CrownLight.RINGS + (i + 0.5) / fine) / CrownLight.RINGS;
      for (int j = 0; j < fine; j++) {
        double z = 2 * (cell / CrownLight.RINGS + (j + 0.5) / fine) / CrownLight.LAYERS - 1;
        all += r;
        in += r * r + z * z < 1 ? r : 0;
      }
    }
    return in / all;
  }

  /** A ball of even leaf density whose leaf area is so much of its shadow, m2/m2. */
  static Crown ball(double radiusM, double leafIndex) {
    double sum = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      sum += volumeShare(cell) * ballShare(cell);
    }
    double leaf = leafIndex * Math.PI * radiusM * radiusM / sum;
    return crown(radiusM, 2 * radiusM, cell -> leaf * volumeShare(cell) * ballShare(cell));
  }

  /** Parameters with a sky, an extinction coefficient, leaves at random and no wood. */
  static ModelParameters parameters(double skyExponent, double extinction) {
    Sourced row =
        new Sourced(
            "species.extinction_coefficient",
            extinction,
            "1",
            new Range(0, 2),
            false,
            Basis.ASSUMPTION,
            "",
            "test");
    ParameterTable table = PlayedTrees.table("tilia-cordata").with(ParameterTable.of(List.of(row)));
    ModelParameters p = ModelParameters.of(SpeciesLibrary.load().get("tilia-cordata"), table);
    return with(p, p.light().with(skyExponent, 1, 0));
  }

  static ModelParameters with(ModelParameters p, LightParameters light) {
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

  /** Light that all leaves absorb, as the area of open flat ground that receives as much, m2. */
  static double absorbedM2(CrownLight light) {
    double sum = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      sum += light.leafAreaM2[cell] * light.lightShare[cell];
    }
    return sum;
  }

  static CrownLight light(Crown crown, ModelParameters parameters, double openness) {
    CrownLight light = new CrownLight();
    light.bottomM = crown.light.bottomM;
    light.topM = crown.light.topM;
    light.radiusM = crown.light.radiusM;
    System.arraycopy(crown.light.leafAreaM2, 0, light.leafAreaM2, 0, CrownLight.CELLS);
    new LightField().spread(crown.state, light, parameters, openness);
    return light;
  }

  static CrownLight light(TreeState state, ModelParameters parameters, double openness) {
    CrownLight light = new CrownLight();
    new LightField().compute(state, light, parameters, openness);
    return light;
  }
}
