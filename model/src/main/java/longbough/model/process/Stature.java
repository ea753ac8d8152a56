package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.AllocationParameters;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * What the shoots keep pace with once leaves were lost: rings narrow with the whole crown's income,
 * shoots live on what the leaves beside them earn.
 *
 * <pre>
 * x = max(w, min(m, w (1 - D) L* / L)),   m' = m + (x - m) / T
 * d* = d + e,    e' = e + 2 (x - w) b,   b as in Slenderness
 * dl = d* + el,  el' = el + 2 (g - 1) m' b
 * L*' = L + max(0, L* - L) (1 - 1 / T)
 * </pre>
 *
 * w this year's ring (m), m the ring width that shoots keep pace with (m/year), T years of memory;
 * L leaf area and L* the one that the tree is used to (m2), which is forgotten with the rings once
 * it is lost; D decline. So a tree that makes as much wood with each leaf as before holds its pace,
 * and one whose leaves earn less (shade, drought) doesn't. d trunk diameter (m); d* the diameter
 * that goes with the shoots' size, from which {@link Extension} and {@link LeafRoom} read height,
 * reach and leaf; e the lost rings between them (m). The leader stands in the light, however much
 * neighbours shade the crown below it, and so grows g times as fast as goes with the other shoots:
 * el is the diameter (m) by which it gets ahead, and b how far the stem can still outgrow its
 * thickness ({@link Slenderness}).
 *
 * <p>Source: height growth goes on when the lower half or three quarters of the crown is pruned,
 * while diameter growth falls (Kupka 2007); shoots before rings, Larson 1963 (from memory); that
 * branches live on their own leaves, Sprugel 2002; the height growth of a stand's upper trees
 * hardly changes with their spacing, Lanner 1985 (from memory); the form is our own.
 */
public final class Stature implements Process {
  @Override
  public String name() {
    return "stature";
  }

  @Override
  public List<String> sources() {
    return List.of("kupka2007", "larson1963", "sprugel2002", "lanner1985");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.TRUNK);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    Trunk trunk = state.trunk;
    AllocationParameters a = context.parameters.allocation();
    double leaf = state.leafAreaM2();
    double ring = trunk.ringRadiusM[trunk.rings - 1] - trunk.ringRadiusM[trunk.rings - 2];
    double pace = paceM(trunk, ring, leaf, 1 - state.vitality.decline);
    trunk.shootPaceM += (pace - trunk.shootPaceM) / a.ringMemoryYears();
    double upright = Slenderness.upright(context.parameters, state);
    trunk.shootLeadM += 2 * (pace - ring) * upright;
    trunk.leaderLeadM += 2 * (state.frame.leaderFactor - 1) * trunk.shootPaceM * upright;
    double missed = Math.max(0, trunk.usualLeafM2 - leaf);
    trunk.usualLeafM2 = leaf + missed * (1 - 1 / a.ringMemoryYears());
  }

  /** What the ring would be had the tree the leaves that it is used to, at most its pace so far. */
  private static double paceM(Trunk trunk, double ringM, double leafM2, double sound) {
    if (leafM2 <= 0) {
      return ringM;
    }
    double full = ringM * sound * trunk.usualLeafM2 / leafM2;
    return Math.max(ringM, Math.min(trunk.shootPaceM, full));
  }
}
