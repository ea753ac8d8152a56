package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.DeclineParameters;
import longbough.model.parameter.SurvivalParameters;
import longbough.model.state.TreeState;
import longbough.model.state.Vitality;

/**
 * Lasting stress: what makes a tree unhealthy goes on acting for years.
 *
 * <pre>
 * a' = a + [onset] u (1 - a) - w v a,       chance of onset = p (1 + q (1 - v))
 * D' = D + [g a + k c + l s f + d max(0, x - x0) / (1 - x0) + r P^2 + b] (1 - D) - m D (v - D)
 * v  = min(1, r / rn),   c = min(1, max(0, (ra - r) / (ra - rd))),   s = max(0, 1 - i / (i0 h))
 * </pre>
 *
 * D decline, the share of the crown that roots and sapwood can no longer carry; shoots die back or
 * return towards 1 - D ({@link CrownPotential}). a ailment: strength of root rot, canker, borers or
 * bad soil; u uniform, how severe a new one is; w share of it that a vigorous tree walls off a
 * year, next to none in conifers; v vigour by the reserve r at the season's end over its normal
 * level rn; g pace of a full ailment, slower in conifers; c depletion between the reserve ra that
 * is safe and the deadly one rd, k what it costs; f share of its leaves that the tree put out a
 * second time this year, i mean of its last rings, h its habit of some ten years, i0 the share of
 * it below which growth is poor: a tree that goes on refoliating when its rings have all but
 * stopped starves its roots, and secondary organisms take it, l what that costs; x drought, x0 what
 * is borne; P share of the root plate lost, of which a small one is made up for by the rest; b
 * share of an evergreen's shoots that died bare this year; m healing. A tree whose vigour is below
 * its damage gets worse by itself.
 *
 * <p>The ailments of conifers are taken to be root and butt rots: the fungus outlives its host in
 * stumps and roots (Hagle 2008) and goes on from there, so that growth falls further behind the
 * longer a tree has had it (Bendz-Hellgren and Stenlid 1995). Such a tree isn't rid of it and lives
 * on for long with a thin crown and narrow rings; needles that were eaten, or roots that were cut,
 * it makes good like any other.
 *
 * <p>This is the decline spiral of predisposing, inciting and contributing factors, Manion 1991,
 * Houston 1985; longer in conifers, Cailleret et al. 2017; refoliation as what makes defoliation
 * deadly, Wargo 1978; roots cut on one to three sides, Watson 1998. The form and the rates are
 * assumptions. The draws are the same under every regime of one future.
 */
public final class Decline implements Process {

  @Override
  public String name() {
    return "decline";
  }

  @Override
  public List<String> sources() {
    return List.of(
        "manion1991",
        "houston1985",
        "cailleret2017",
        "hagle2008",
        "bendz1995",
        "wargo1978",
        "watson1998");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    double draw = context.random.uniform();
    double severity = context.random.uniform();
    TreeState state = context.state;
    Vitality vitality = state.vitality;
    DeclineParameters p = context.parameters.decline();
    SurvivalParameters s = context.parameters.survival();
    double reserve = context.autumnReserveFraction / s.normalReserve();
    double vigour = Math.min(1, reserve);
    if (draw < p.onset() * (1 + p.onsetWeak() * (1 - vigour))) {
      vitality.ailment += severity * (1 - vitality.ailment);
    }
    boolean conifer = context.parameters.species().conifer();
    double drought = Math.max(0, 1 - context.worstWater - p.droughtBorne());
    double injury =
        (conifer ? p.paceConifer() : p.pace()) * vitality.ailment
            + p.hunger() * Math.min(1, s.depletion(reserve))
            + p.starvedRoots()
                * vitality.refoliation
                * Vigour.stunted(p, state.trunk, p.shortGrowth())
            + p.droughtLoss() * drought / (1 - p.droughtBorne())
            + p.rootLoss() * state.roots.plateLost * state.roots.plateLost
            + vitality.shootsLost;
    double decline = vitality.decline;
    double healed = p.healing() * decline * (vigour - decline);
    vitality.decline =
        Math.min(1, Math.max(0, decline + Math.min(1, injury) * (1 - decline) - healed));
    vitality.ailment *= 1 - (conifer ? p.wallingConifer() : p.walling()) * vigour;
    vitality.refoliation = 0;
  }
}
