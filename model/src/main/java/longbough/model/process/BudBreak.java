package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.parameter.SproutParameters;
import longbough.model.state.Limbs;
import longbough.model.state.Pools;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;

/**
 * Sets the leaf area that this spring's buds will put out; the flush then pays for it.
 *
 * <pre>
 * deciduous: L = F b            evergreen: new = min(F b - L, (v F / life + n) b),  L' = L + new
 * sprouts:   l = n a h^2 (1 - (1 - u) max(0, 1 - y)), at most what the wood below supports
 * </pre>
 *
 * F leaf area of a zone with full buds in its light (m2); b bud fullness; L leaves of earlier
 * years; life leaf life (years); v surge: a yearly cohort can't much exceed the usual one, so lost
 * needles come back slowly; n leaf that the new space of a young limb holds (m2): all its shoots
 * are young, so that their first cohort fills it ({@link LeafRoom}); in the sprouts' line n, h, y
 * number, length (m) and mean age (years) of sprouts; u what shoots from latent buds, which have no
 * leaves preformed, carry over their first season. The ages of an evergreen's leaves move on by
 * one. Source: pipe model, Shinozaki et al. 1964, for what wood supports; the rest are assumptions.
 */
public final class BudBreak implements Process {

  @Override
  public String name() {
    return "bud break";
  }

  @Override
  public List<String> sources() {
    return List.of("shinozaki1964");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.SPROUTS);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    double before = state.leafAreaM2();
    double fresh = zones(context);
    fresh += sprouts(context);
    if (context.parameters.species().evergreen()) {
      age(state.pools, before, fresh);
      context.leafVigour = LeafAgeing.vigour(state.pools, context.parameters, false);
    } else {
      state.pools.singleLeafAge();
    }
    double total = state.leafAreaM2();
    context.newCanopyShare = total > 0 ? Math.min(1, fresh / total) : 0;
    context.light.stale = true;
  }

  private static double zones(YearContext context) {
    Limbs limbs = context.state.limbs;
    SpeciesParameters s = context.parameters.species();
    double cohort = context.parameters.allocation().flushSurge() / s.leafLifeYears();
    double fresh = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      double full = limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone];
      double old = s.evergreen() ? limbs.leafAreaM2[zone] : 0;
      double add = Math.max(0, full - old);
      if (s.evergreen()) {
        add = Math.min(add, cohort * full + limbs.freshLeafM2[zone] * limbs.budFullness[zone]);
      }
      limbs.leafAreaM2[zone] = old + add;
      context.newLeafShare[zone] = old + add > 0 ? add / (old + add) : 0;
      fresh += add;
    }
    return fresh;
  }

  private static double sprouts(YearContext context) {
    Sprouts sprouts = context.state.sprouts;
    boolean evergreen = context.parameters.species().evergreen();
    double fresh = 0;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      double target = sprouts.count[cohort] > 0 ? target(context, cohort) : 0;
      double old = evergreen ? sprouts.leafAreaM2[cohort] : 0;
      target = Math.max(old, target);
      sprouts.leafAreaM2[cohort] = target;
      context.newSproutLeafShare[cohort] = target > 0 ? (target - old) / target : 0;
      fresh += target - old;
    }
    return fresh;
  }

  private static double target(YearContext context, int cohort) {
    ModelParameters parameters = context.parameters;
    SproutParameters p = parameters.sprout();
    Sprouts sprouts = context.state.sprouts;
    double length = sprouts.lengthM[cohort];
    double unfolded = 1 - (1 - p.firstSeason()) * Math.max(0, 1 - sprouts.ageYears[cohort]);
    double wanted = unfolded * sprouts.count[cohort] * p.leafPerLength2() * length * length;
    return Math.min(wanted, SproutRoom.leafAreaM2(context.state, parameters, cohort));
  }

  private static void age(Pools pools, double beforeM2, double freshM2) {
    double total = beforeM2 + freshM2;
    if (total <= 0) {
      pools.singleLeafAge();
      return;
    }
    double[] share = pools.leafAgeShare;
    for (int a = Pools.MAX_LEAF_AGES - 1; a > 0; a--) {
      share[a] = share[a - 1] * beforeM2 / total;
    }
    share[0] = freshM2 / total;
  }
}
