package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/**
 * How much leaf each zone would carry with full buds in its light, and the return of lost buds.
 *
 * <pre>
 * F* = D V q_z fit(E),   V = pi reach^2 share,   D = lf o(d) La(d) / (Ka(d)^2 Ha(d))
 * fit = min(1, max(0, (E - E0) / w)) min(1, max(0, 1 + y / k)),   F' = F + n + c (F* - n - F)
 * n = F* max(0, 1 - V0 / V)
 * b' = b + v (1 - h (1 - f)) min(r (1 - D - b), s b) where b < 1 - D,   b + r (1 - D - b) where it is above
 * </pre>
 *
 * V crown volume of the limb (m3) with the part q of its zone; D leaf area density (m2 m-3) from
 * the species' leaf area, crown diameter and height at diameter d, of a mean open-grown crown were
 * it lit throughout (o) and scaled by this tree's leaf factor lf: larger crowns shade themselves
 * more, and what was measured on them is what their shade left. lf is set where the tree stands, in
 * its neighbours' shade: trees of forests carry as much leaf for the size of their crowns as
 * open-grown ones, more densely in the light that is left, though no denser in full light than a
 * multiple of the crown's mean: what the stand's light does not carry then is not there. n leaf of
 * this year's new shoots: where the limb's space has grown from V0 to V (m3), they fill what is new
 * as its light allows. E light share in the season, before leaves fall, E0 the share that repays a
 * leaf, w span; y last season's net return of a leaf and k its yearly cost (kg C m-2): so that
 * crowns don't overshoot and later collapse. b bud fullness, r return rate, s most new shoots on
 * the shoots there are, since those bear the buds, v reserve over its set point, f how far the
 * leaves beside the buds were there to feed them ({@link ShootFeed}) and h what their loss costs, D
 * decline: shoots die back to what roots and sapwood can carry. Neighbours slowly close a gap.
 * Source: allometry McPherson et al. 2016; leaf of forest trees Falster et al. 2015; the light rule
 * is an assumption.
 */
public final class CrownPotential implements Process {
  private final LeafRoom room = new LeafRoom();
  private final double[] netKgCM2 = new double[CrownLight.CELLS];

  @Override
  public String name() {
    return "crown potential";
  }

  @Override
  public List<String> sources() {
    return List.of("urbantrees2016", "falster2015", "heichel1984", "sprugel2002");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE, StatePart.LIMBS);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    ModelParameters p = context.parameters;
    fillGaps(state, p.allocation());
    returns(context);
    returnBuds(state, p);
    room.follow(state, context.light, context.light.seasonShare, p, p.allocation().crownFollow());
  }

  /** Last season's net return of each zone's leaves, after what they cost to build. */
  private void returns(YearContext context) {
    CrownLight light = context.light;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      double capacity = Foliage.capacityShare(context.parameters, light.seasonShare[cell]);
      double cost = LeafRoom.yearlyCostKgCM2(context.parameters, capacity);
      netKgCM2[cell] = light.returnKgCM2[cell] - cost;
    }
    Limbs limbs = context.state.limbs;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      limbs.leafReturnKgCM2[zone] = netKgCM2[light.zoneCell[zone]];
    }
  }

  private static void returnBuds(TreeState state, ModelParameters p) {
    AllocationParameters a = p.allocation();
    double vigour = Vigour.of(state, p);
    double rate = p.species().conifer() ? a.budRecoveryConifer() : a.budRecovery();
    double carried = 1 - state.vitality.decline;
    double held = p.species().conifer() ? 1 - 1 / p.species().leafLifeYears() : 1;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
          double missing = carried - limbs.budFullness[zone];
          double fed = 1 - a.hungryBuds() * (1 - ShootFeed.share(limbs, zone, held));
          limbs.budFullness[zone] +=
              missing > 0
                  ? vigour * fed * Math.min(rate * missing, a.shootGain() * limbs.budFullness[zone])
                  : rate * missing;
        }
      }
    }
  }

  private static void fillGaps(TreeState state, AllocationParameters a) {
    Limbs limbs = state.limbs;
    double filled = 0;
    int living = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        filled += limbs.crownShareM[limb];
        living++;
      }
    }
    double gap = state.trunk.heightM - state.crownBaseM() - filled;
    if (living == 0 || gap <= 0) {
      return;
    }
    double growth = Math.min(a.gapFilling(), gap / filled);
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        limbs.crownShareM[limb] *= 1 + growth;
      }
    }
  }
}
