package longbough.model.process;

import longbough.model.parameter.CarbonParameters;

/**
 * What the leaves can do with the water there is: 1 - depth x sensitivity (1 - min(1, W / W0)) of
 * soil water share W (1). Source: Granier et al. 2007, see {@link Assimilation}.
 */
public final class LeafWater {

  private LeafWater() {}

  /** Share of assimilation that soil water allows in the month at hand. */
  public static double allows(YearContext context) {
    CarbonParameters p = context.parameters.carbon();
    double share = context.site.soilWaterShare[context.month - 1];
    double dry = 1 - Math.min(1, share / p.droughtThreshold());
    return 1 - p.droughtDepth() * context.parameters.species().droughtSensitivity() * dry;
  }
}
