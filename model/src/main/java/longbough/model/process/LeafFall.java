package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Deciduous trees drop all leaf carbon in autumn; the leaf area stays on record as what the buds
 * will put out again, since pruning in winter takes it with the buds. Evergreens drop their oldest
 * leaves, conifers in autumn, broadleaves in spring as the buds break: they exchange leaves then,
 * and one that keeps them little longer than a year is nearly bare for some weeks, but never in
 * winter:
 *
 * <pre>
 * kept share of age class a = min(1, max(0, life - (a + 1)))
 * </pre>
 *
 * life leaf life (years), a age in whole years. Source: leaf life Wright et al. 2004; the season
 * common practice.
 */
public final class LeafFall implements Process {

  @Override
  public String name() {
    return "leaf fall";
  }

  @Override
  public List<String> sources() {
    return List.of("wright2004");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.SPROUTS);
  }

  @Override
  public void run(YearContext context) {
    SpeciesParameters s = context.parameters.species();
    if (s.evergreen()) {
      double shed = shedShare(context.state.pools, s.leafLifeYears());
      context.ledger.book(Flow.LEAF_LITTER, LeafLoss.take(context.state, shed));
      context.light.stale = true;
    } else {
      context.ledger.book(Flow.LEAF_LITTER, dropAll(context.state));
    }
  }

  private static double shedShare(Pools pools, double lifeYears) {
    double kept = 0;
    double[] share = pools.leafAgeShare;
    for (int age = 0; age < Pools.MAX_LEAF_AGES; age++) {
      boolean last = age == Pools.MAX_LEAF_AGES - 1;
      share[age] *= last ? 0 : Math.min(1, Math.max(0, lifeYears - (age + 1)));
      kept += share[age];
    }
    if (kept <= 0) {
      pools.singleLeafAge();
      return 1;
    }
    for (int age = 0; age < Pools.MAX_LEAF_AGES; age++) {
      share[age] /= kept;
    }
    return 1 - Math.min(1, kept);
  }

  private static double dropAll(TreeState state) {
    Limbs limbs = state.limbs;
    double lost = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      lost += limbs.leafKgC[zone];
      limbs.leafKgC[zone] = 0;
    }
    Sprouts sprouts = state.sprouts;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      lost += sprouts.leafKgC[cohort];
      sprouts.leafKgC[cohort] = 0;
    }
    return lost;
  }
}
