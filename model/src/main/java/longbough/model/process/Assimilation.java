package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.numeric.Fast;
import longbough.model.parameter.CarbonParameters;
import longbough.model.parameter.DeclineParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.Site;
import longbough.model.parameter.SiteYear;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Vitality;

/**
 * Gross assimilation of a month, cell by cell.
 *
 * <pre>
 * P_c = u [n p(B + D) + (1 - n) p(D)],   p(x) = x A_c / (x + A_c),   A_c = A s(E_c) (1 + comp)
 * D = q a f R (1 - b) E_c,   B = q a f R b E1 / S,   n = S E_c / E1
 * G = sum_c L_c P_c  d  fT fW fD F y on,   A = (1 + rd) An site
 * </pre>
 *
 * P assimilation per leaf area (umol m-2 s-1), of which the share n of leaves is in the sun and the
 * rest lives on the light of the sky; A gross capacity of sun leaves from the net one An of leaf
 * measurements, dark respiration rd over it and soil quality, s shade share; D and B what the light
 * of the sky and the sun's beams could be made into (umol m-2 s-1): global radiation R, its active
 * share f with photons a joule, leaf absorptance a, quantum yield q, E light share of the cell, E1
 * that of a leaf with nothing before it; b share of the light that comes in beams and S share of
 * the day in which the sun shines ({@link Sunbeams}): the deeper in the crown, the fewer leaves are
 * in the sun, and these have as much of it as any other and can't use it all. u what the course of
 * a day and leaves that face all ways take, reckoned from both (see {@code carbon.uneven_light}); L
 * leaf area (m2); d daylight (s); fT parabola of daytime temperature; fW = 1 - depth x sensitivity
 * (1 - min(1, W/W0)) of soil water share W; fD = 1 - h (D' + e a' (1 - D')): damaged roots and
 * sapwood (decline D') leave the crown short of water, and so does an ailment a' before the crown
 * shows it; F the tree's own luck ({@link Weather}); on share of leaves out; y the canopy's youth
 * ({@link LeafAgeing}); comp the temporary rise in the capacity of leaves left after a loss (none
 * in conifers), fading month by month: leaves that lack light gain nothing by it. Writes the
 * reserve, where sugar goes first. Source: rectangular hyperbola as in Monsi and Saeki 1953; sunlit
 * and shaded leaves de Pury and Farquhar 1997; capacity Wright et al. 2004; comp PMC3617827; fW
 * Granier et al. 2007.
 */
public final class Assimilation implements Process {
  private static final double J_PER_MJ = 1e6;

  private final Site place;

  public Assimilation(Site place) {
    this.place = place;
  }

  @Override
  public String name() {
    return "assimilation";
  }

  @Override
  public List<String> sources() {
    return List.of(
        "monsi1953", "depury1997", "page1964", "wright2004", "jxb2013", "granier2007", "reich2009");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.RESERVE, StatePart.POOLS);
  }

  @Override
  public void run(YearContext context) {
    ModelParameters parameters = context.parameters;
    CarbonParameters p = parameters.carbon();
    SpeciesParameters s = parameters.species();
    SiteYear site = context.site;
    int month = context.month - 1;
    double on = LeafTime.leavesOut(context);
    double warmth = warmth(p, site.temperatureC[month]);
    double water = LeafWater.allows(context);
    double carried = 1 - thirst(parameters.decline(), context.state.vitality);
    if (context.leafOn[month] > 0.5) {
      context.worstWater = Math.min(context.worstWater, water);
    }
    if (on == 0 || warmth == 0 || site.dayLengthH[month] * site.radiationMjM2Day[month] <= 0) {
      return;
    }
    double daylightS = site.dayLengthH[month] * LeafTime.SECONDS_PER_HOUR;
    double photons =
        site.radiationMjM2Day[month] * J_PER_MJ * p.parShare() * p.photonsPerJoule() / daylightS;
    double lit = photons * p.leafAbsorptance() * p.quantumYield();
    double capacity =
        place.growthFactor() * s.photosyntheticCapacityUmolM2S() * (1 + s.darkRespirationRatio());
    double scale =
        p.unevenLight()
            * capacity
            * LeafTime.KG_C_PER_UMOL
            * daylightS
            * LeafTime.DAYS
            * context.span
            * warmth
            * water
            * carried
            * site.fortune
            * on
            * context.leafVigour;
    double risen = 1 + context.state.pools.compensation;
    CrownLight light = context.light;
    double clear = site.radiationMjM2Day[month] / site.aboveAirMjM2Day[month];
    double beams = Sunbeams.share(clear, parameters.light());
    double shining = Sunbeams.time(clear, parameters.light());
    double unshaded = parameters.light().unshaded(s);
    double sunny = lit * beams * unshaded / (shining * capacity);
    double sum = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      double inSun = shining * light.lightShare[cell] / unshaded;
      double shade = lit * (1 - beams) * light.lightShare[cell] / capacity;
      double sun = shade + sunny;
      double share = risen * light.capacityShare[cell];
      double earned = scale * used(inSun, sun, shade, share);
      light.returnKgCM2[cell] += earned;
      sum += earned * light.leafAreaM2[cell];
    }
    context.state.pools.compensation *= Fast.pow(1 - on * (1 - p.compensationFade()), context.span);
    context.state.pools.reserveKgC += sum;
    context.netKgC += sum;
    context.earnedKgC += sum;
    context.ledger.book(Flow.ASSIMILATION, sum);
  }

  /**
   * What leaves make of their light, in units of its own.
   *
   * @param inSun share of the leaves that the sun's beams reach, 1
   * @param sun what the light on these could be made into
   * @param shade the same of the others
   * @param capacity what a leaf can make at most
   */
  static double used(double inSun, double sun, double shade, double capacity) {
    return capacity * (inSun * sun / (sun + capacity) + (1 - inSun) * shade / (shade + capacity));
  }

  /** Share of assimilation lost because damaged or ailing roots and sapwood carry too little. */
  private static double thirst(DeclineParameters p, Vitality vitality) {
    double ailing = p.hiddenShare() * vitality.ailment * (1 - vitality.decline);
    return p.thirst() * (vitality.decline + ailing);
  }

  private static double warmth(CarbonParameters p, double meanC) {
    double distance =
        (meanC + p.daytimeWarmthC() - p.optimumTemperatureC()) / p.temperatureWidthC();
    return Math.max(0, 1 - distance * distance);
  }
}
