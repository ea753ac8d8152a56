package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.numeric.Fast;
import longbough.model.parameter.SproutParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Sprouts grow on, thin themselves, and the oldest turn into branches.
 *
 * <pre>
 * dh = k h1 v min(1, room / want) / (1 + a / ag),    wood = n w h^3
 * n' = n (1 - m),   m = t + c min(1, a) max(0, 1 - room / want),   wood' = wood (1 - y m)
 * </pre>
 *
 * h length (m), a mean age (years), ag age at which growth in length has halved, h1 first-year
 * length of the species, v reserve over its set point; n number; t yearly thinning, c crowding
 * where the leaf area they want exceeds their room, from their second year on; y mass of those that
 * die over the mean: the small ones die, so that the mean length of the others is the greater; w
 * wood of a shoot over its length cubed (kg C m-3). Growth is paid from the year's budget by the
 * part that the sprouts' leaves had in what all leaves earned over the season after their own
 * respiration, up to a limit: those in the shade of the crown earn little; the dead fall. Past some
 * years a share a year is counted as limb foliage: fewer sprouts, more bud fullness, the weak
 * attachment stays on record as the limb's headed tip. Source: Follett et al. 2016, Perrette et al.
 * 2020 for the course; of a willow coppice's shoots nine in ten died within three years and were a
 * tenth of its mass (abstract, see parameters {@code sprout.dying_size}), of another's an eighth to
 * a fifth in the first season; other numbers mostly assumptions.
 */
public final class SproutGrowth implements Process {

  @Override
  public String name() {
    return "sprout growth";
  }

  @Override
  public List<String> sources() {
    return List.of("follett2016", "perrette2020", "willowthinning", "willowrotations");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.SPROUTS, StatePart.FOLIAGE, StatePart.LIMBS, StatePart.POOLS);
  }

  @Override
  public void run(YearContext context) {
    Sprouts sprouts = context.state.sprouts;
    double firstM =
        context.parameters.sprout().lengthening()
            * context.parameters.species().sproutShootLengthM()
            * Vigour.of(context.state, context.parameters);
    double wanted = 0;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.count[cohort] > 0) {
        thin(context, cohort);
        wanted += wantedKgC(context, cohort, nextLengthM(context, cohort, firstM));
      }
    }
    double share = Math.min(context.parameters.sprout().budgetShare(), earnedShare(context));
    double able = Spending.structureFor(context, share * context.state.pools.growthBudgetKgC);
    double met = wanted > able ? able / wanted : 1;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.count[cohort] > 0) {
        lengthen(context, cohort, nextLengthM(context, cohort, firstM), met);
        if (cohort < Limbs.MAX
            && sprouts.ageYears[cohort] > context.parameters.sprout().establishedYears()) {
          establish(context, cohort);
        }
        sprouts.ageYears[cohort] += 1;
      }
    }
  }

  /** Part of the season's earnings of all leaves that those of the sprouts brought in, 0 to 1. */
  private static double earnedShare(YearContext context) {
    Sprouts sprouts = context.state.sprouts;
    Limbs limbs = context.state.limbs;
    CrownLight light = context.light;
    double own = 0;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      if (sprouts.leafAreaM2[cohort] > 0) {
        double earned = light.returnKgCM2[light.sproutCell[cohort]];
        own += sprouts.leafAreaM2[cohort] * Math.max(0, earned);
      }
    }
    double all = own;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      all += limbs.leafAreaM2[zone] * Math.max(0, light.returnKgCM2[light.zoneCell[zone]]);
    }
    return all > 0 ? own / all : 0;
  }

  private static void thin(YearContext context, int cohort) {
    TreeState state = context.state;
    SproutParameters p = context.parameters.sprout();
    Sprouts sprouts = state.sprouts;
    double crowding = Math.min(1, sprouts.ageYears[cohort]) * (1 - housed(context, cohort));
    double lost = Math.min(1, p.thinning() + p.crowding() * crowding);
    double mass = lost < 1 ? lost * p.dyingSize() : 1;
    context.ledger.book(Flow.SHED_WOOD, mass * sprouts.woodKgC[cohort]);
    context.ledger.book(Flow.LEAF_LITTER, mass * sprouts.leafKgC[cohort]);
    sprouts.woodKgC[cohort] *= 1 - mass;
    sprouts.leafKgC[cohort] *= 1 - mass;
    sprouts.leafAreaM2[cohort] *= 1 - mass;
    sprouts.count[cohort] *= 1 - lost;
    if (lost < 1) {
      // The small ones die, so those that stay are longer than the mean was.
      sprouts.lengthM[cohort] *= Fast.pow((1 - mass) / (1 - lost), 1.0 / 3);
    }
  }

  /** Share of the leaf area the sprouts of a cohort want that they have room for. */
  private static double housed(YearContext context, int cohort) {
    Sprouts sprouts = context.state.sprouts;
    double length = sprouts.lengthM[cohort];
    double perLength2 = context.parameters.sprout().leafPerLength2();
    double wanted = sprouts.count[cohort] * perLength2 * length * length;
    double room = SproutRoom.leafAreaM2(context.state, context.parameters, cohort);
    return wanted > room ? room / wanted : 1;
  }

  /** Length after this year's growth, firstM being that of a sprout just born. */
  private static double nextLengthM(YearContext context, int cohort, double firstM) {
    Sprouts sprouts = context.state.sprouts;
    double slowed = 1 + sprouts.ageYears[cohort] / context.parameters.sprout().lengtheningYears();
    return sprouts.lengthM[cohort] + housed(context, cohort) * firstM / slowed;
  }

  private static double wantedKgC(YearContext context, int cohort, double lengthM) {
    Sprouts sprouts = context.state.sprouts;
    double wood =
        sprouts.count[cohort]
            * context.parameters.sprout().woodPerLength3()
            * lengthM
            * lengthM
            * lengthM;
    return Math.max(0, wood - sprouts.woodKgC[cohort]);
  }

  private static void lengthen(YearContext context, int cohort, double lengthM, double met) {
    Sprouts sprouts = context.state.sprouts;
    double built = met * wantedKgC(context, cohort, lengthM);
    sprouts.lengthM[cohort] += met * (lengthM - sprouts.lengthM[cohort]);
    sprouts.woodKgC[cohort] += built;
    Spending.fromBudget(context, built);
  }

  private static void establish(YearContext context, int limb) {
    Limbs limbs = context.state.limbs;
    Sprouts sprouts = context.state.sprouts;
    double share = context.parameters.sprout().establishedShare();
    int zone = limb * Limbs.ZONES + (sprouts.position[limb] > 0.5 ? Limbs.OUTER : Limbs.INNER);
    double leaf = share * sprouts.leafAreaM2[limb];
    limbs.leafAreaM2[zone] += leaf;
    limbs.leafKgC[zone] += share * sprouts.leafKgC[limb];
    limbs.woodKgC[limb] += share * sprouts.woodKgC[limb];
    double full = limbs.fullLeafAreaM2[zone];
    if (full > 0) {
      limbs.budFullness[zone] = Math.min(1, limbs.budFullness[zone] + leaf / full);
    }
    sprouts.count[limb] *= 1 - share;
    sprouts.leafAreaM2[limb] *= 1 - share;
    sprouts.leafKgC[limb] *= 1 - share;
    sprouts.woodKgC[limb] *= 1 - share;
  }
}
