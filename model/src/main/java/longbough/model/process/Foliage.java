package longbough.model.process;

import longbough.model.parameter.ModelParameters;

/**
 * How a leaf is built by its light: capacity and mass per area of sun and shade leaves.
 *
 * <pre>
 * s(E) = s0 + (1 - s0) min(1, E / E1)
 * </pre>
 *
 * E light share of the cell (1); s0 capacity of deep-shade leaves over sun leaves (1); E1 light
 * share of a full sun leaf (1). Mass per area follows the same share, since capacity per mass
 * changes little within a crown (Ellsworth and Reich 1993). The species' files hold capacity and
 * mass per area of a full sun leaf; where a crown's mean was weighed, they hold it over {@code
 * carbon.mean_leaf}. Source: the shade range is from memory; see parameters {@code
 * carbon.shade_capacity}.
 */
public final class Foliage {

  private Foliage() {}

  static double capacityShare(ModelParameters p, double lightShare) {
    double shade = p.carbon().shadeCapacity(p.species());
    return shade + (1 - shade) * Math.min(1, lightShare / p.carbon().fullSunShare());
  }

  /** Carbon in a square metre of leaf built in a cell, kg C m-2. */
  public static double leafKgCM2(ModelParameters p, double capacityShare) {
    return p.species().leafMassPerAreaKgM2() * p.carbon().woodCarbon() * capacityShare;
  }
}
