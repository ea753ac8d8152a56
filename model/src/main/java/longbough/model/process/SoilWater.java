package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.numeric.Fast;
import longbough.model.parameter.Site;
import longbough.model.parameter.WeatherParameters;

/**
 * Water in the rooted soil as a bucket, month by month.
 *
 * <pre>
 * W' = min(C, W + i P - E),   E = E0 (cs + cc (1 - exp(-L / 2A))) min(1, W / (r C)),
 * E0 = 0.61 D / (D + g) R / 2.45 - 0.12   (Makkink, mm/day)
 * </pre>
 *
 * W water (mm), C what roots can reach (mm, the species' reach times what the site holds, less by
 * the share of root plate lost), P rain (mm), i share that infiltrates, L/A leaf area over crown
 * projection (m2/m2), D slope of the saturation curve (kPa/K), g psychrometer constant (kPa/K), R
 * radiation (MJ m-2 day-1), r share of water below which uptake falls. Fewer leaves use less water,
 * so a pruned tree meets a drought with more soil water. How deep a species roots is its reach: the
 * plates of spruce live on the rain of the summer, oak and beech also on that of the winter (Allen
 * et al. 2019). Source: Makkink 1957; Granier et al. 2007 for r.
 */
public final class SoilWater implements Process {
  private static final double DAYS = 30.4;
  private static final double LATENT_HEAT = 2.45;
  private static final double MAKKINK_SLOPE = 0.61;
  private static final double MAKKINK_OFFSET = 0.12;
  private static final double PSYCHROMETER = 0.066;
  private static final double MAGNUS_A = 17.27;
  private static final double MAGNUS_B = 237.3;
  private static final double MAGNUS_E = 0.6108;

  private final Site place;

  public SoilWater(Site place) {
    this.place = place;
  }

  @Override
  public String name() {
    return "soil water";
  }

  @Override
  public List<String> sources() {
    return List.of("makkink1957", "granier2007", "allen2019");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of();
  }

  @Override
  public void run(YearContext context) {
    WeatherParameters p = context.parameters.weather();
    int month = context.month - 1;
    double capacity =
        context.parameters.species().rootingReach()
            * place.soilWaterCapacityMm()
            * (1 - context.state.roots.plateLost);
    double water =
        Double.isNaN(context.soilWaterMm) ? capacity : Math.min(capacity, context.soilWaterMm);
    double threshold = context.parameters.carbon().droughtThreshold();
    double radius = context.light.radiusM;
    double leafIndex = context.light.allLeafAreaM2 / (Math.PI * radius * radius + 1);
    double demand =
        referenceMmDay(context.site.temperatureC[month], context.site.radiationMjM2Day[month])
            * DAYS
            * (p.soilCoefficient()
                + p.cropCoefficient() * context.leafOn[month] * (1 - Fast.exp(-leafIndex / 2)));
    double supply = water + p.infiltration() * context.site.rainMm[month];
    double limit = Math.min(1, supply / (threshold * capacity + demand / 2 + 1e-9));
    water = Math.min(capacity, Math.max(0, supply - demand * limit));
    context.soilWaterMm = water;
    context.site.soilWaterShare[month] = capacity > 0 ? water / capacity : 0;
  }

  /** Reference evaporation, mm/day. */
  static double referenceMmDay(double temperatureC, double radiationMjM2Day) {
    double warm = temperatureC + MAGNUS_B;
    double slope =
        MAGNUS_E * Fast.exp(MAGNUS_A * temperatureC / warm) * MAGNUS_A * MAGNUS_B / (warm * warm);
    double share = slope / (slope + PSYCHROMETER);
    return Math.max(0, MAKKINK_SLOPE * share * radiationMjM2Day / LATENT_HEAT - MAKKINK_OFFSET);
  }
}
