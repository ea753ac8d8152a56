package longbough.model.process;

import longbough.model.numeric.Fast;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.ReserveParameters;
import longbough.model.state.Organ;
import longbough.model.state.Pools;
import longbough.model.state.Stores;
import longbough.model.state.TreeState;

/**
 * Where the reserve lies: what a step adds to it or takes from it is shared out among branches,
 * stem and roots, and what lies unevenly flows along the path between them.
 *
 * <pre>
 * n > 0:  dR_i = n (C_i - R_i) / sum (C - R)          n < 0:  dR_i = n m_i / sum m
 * flow    = (1 - exp(-k t)) (x_a - x_b) C_a C_b / (C_a + C_b),   x = R / C,   a, b neighbours
 * k       = (v / H) C_s (C_a + C_b) / (C_a C_b)
 * R_l     = min(R_n, e A + x_n C_l),   x_n = (R_n - e A) / (C_b + C_l),   C_l 0 in deciduous trees
 * </pre>
 *
 * R reserve and C ceiling (kg C) of branches b with the leaves l on them (together n, near to the
 * buds), stem and roots; n net change in the step (kg C): sugar on its way from the leaves is
 * unloaded where there is room, and what income doesn't cover is taken where living tissue spends
 * it, m its respiring mass (kg C). k rate at which two neighbours even out (1/month), t the step
 * (months): the stem is the path to both sides, as wide as its store C_s is large and as long as
 * the tree is high, H (m); v speed (m/month). A the day's assimilation (kg C), e days of it that
 * stand in the leaves before they are exported: sugar flows out of a leaf only while it holds more
 * than the twig, so that leaves are fullest when they earn most. The flush, sprouts and cuts take
 * from what is near ({@link Pools}). Source: the pressure flow of Munch 1930 in its simplest form,
 * from memory; leaves are paid from the starch of their own twigs, Klein et al. 2016, and roots
 * feed the sinks nearest to them, Tracing carbon (aspen); leaves gain sugar through the day while
 * they export, Study of sugar export (red oak); the forms and rates are assumptions.
 */
public final class ReservePath {
  private static final Organ[] ORGANS = Organ.values();
  private static final int LEAF = Organ.LEAF.ordinal();
  private static final int BRANCH = Organ.BRANCH.ordinal();
  private static final int STEM = Organ.STEM.ordinal();
  private static final int ROOT = Organ.ROOT.ordinal();

  private final double[] held = new double[ORGANS.length];
  private final double[] room = new double[ORGANS.length];

  /**
   * Shares out what a step has changed.
   *
   * @param beforeKgC reserve of the tree before the step's income and costs
   * @param forLeavesKgC part of the income that waits near to unfolding leaves
   */
  void settle(YearContext context, double beforeKgC, double forLeavesKgC) {
    TreeState state = context.state;
    Pools pools = state.pools;
    Stores stores = pools.stores;
    ModelParameters p = context.parameters;
    if (context.earnedKgC > 0 || p.species().evergreen()) {
      stores.ceiling(Organ.LEAF, p.reserve().leafCeilingKgC(p, state.leafKgC()));
    }
    for (Organ organ : ORGANS) {
      held[organ.ordinal()] = stores.share(organ) * beforeKgC;
      room[organ.ordinal()] = stores.ceilingKgC(organ);
    }
    // The leaves are one with their twigs until the last.
    held[BRANCH] += held[LEAF];
    room[BRANCH] += p.species().evergreen() ? room[LEAF] : 0;
    double change = pools.reserveKgC - beforeKgC - forLeavesKgC;
    if (change > 0) {
      unload(change);
    } else {
      spend(-change, context);
    }
    double width = p.reserve().exchange() / state.trunk.heightM * room[STEM] * context.span;
    even(BRANCH, STEM, width);
    even(STEM, ROOT, width);
    held[BRANCH] += forLeavesKgC;
    keepInLeaves(context, p.reserve());
    stores.spread(held);
    context.earnedKgC = 0;
  }

  private void unload(double kgC) {
    double free = 0;
    double all = 0;
    for (int i = BRANCH; i <= ROOT; i++) {
      free += Math.max(0, room[i] - held[i]);
      all += room[i];
    }
    for (int i = BRANCH; i <= ROOT; i++) {
      double open = Math.max(0, room[i] - held[i]);
      held[i] += free > 0 ? kgC * open / free : all > 0 ? kgC * room[i] / all : 0;
    }
  }

  private void spend(double kgC, YearContext context) {
    TreeState state = context.state;
    ModelParameters p = context.parameters;
    double active = p.carbon().activeShare(state.trunk.dbhM() / 2, state.trunk.sapwoodShare);
    Pools pools = state.pools;
    double branch = context.livingBranchKgC;
    double stem = active * (pools.trunkSapwoodKgC + pools.trunkHeartwoodKgC);
    double fine = p.carbon().fineRootRespiration() / p.carbon().sapwoodRespiration(p.species());
    double root = active * pools.coarseRootKgC + fine * pools.fineRootKgC;
    double all = branch + stem + root;
    if (all <= 0) {
      return;
    }
    double lacking = draw(BRANCH, kgC * branch / all);
    lacking += draw(STEM, kgC * stem / all);
    lacking += draw(ROOT, kgC * root / all);
    double left = held[BRANCH] + held[STEM] + held[ROOT];
    double kept = left > 0 ? Math.max(0, 1 - lacking / left) : 0;
    for (int i = BRANCH; i <= ROOT; i++) {
      held[i] *= kept;
    }
  }

  /** Takes what an organ has of an amount; returns what it lacks. */
  private double draw(int organ, double kgC) {
    double given = Math.min(held[organ], kgC);
    held[organ] -= given;
    return kgC - given;
  }

  private void even(int a, int b, double width) {
    if (room[a] <= 0 || room[b] <= 0) {
      return;
    }
    double both = room[a] + room[b];
    double evened = 1 - Fast.exp(-width * both / (room[a] * room[b]));
    double flow = evened * (held[a] * room[b] - held[b] * room[a]) / both;
    held[a] -= flow;
    held[b] += flow;
  }

  private void keepInLeaves(YearContext context, ReserveParameters p) {
    double days = LeafTime.DAYS * context.span;
    double passing = Math.min(held[BRANCH], p.leafDays() * context.earnedKgC / days);
    double fill = 0;
    if (context.parameters.species().evergreen()) {
      fill = room[BRANCH] > 0 ? (held[BRANCH] - passing) / room[BRANCH] : 0;
    }
    double leaf = room[LEAF] > 0 ? Math.min(held[BRANCH], passing + fill * room[LEAF]) : 0;
    held[LEAF] = leaf;
    held[BRANCH] -= leaf;
  }
}
