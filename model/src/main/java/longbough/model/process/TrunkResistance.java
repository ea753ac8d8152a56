package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.numeric.Fast;
import longbough.model.parameter.StrengthParameters;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * The gusts that would break the stem or pull the tree out of the ground.
 *
 * <p>Bending moment at station s: M(s) = q Σ A φ(z) (z - s) over all leaves whose limb is attached
 * above s, with q drag pressure at the reference speed (Pa), A drag area (m2) at height z, φ the
 * wind profile's load (-). The stem breaks where M over its modulus W = π/4 R³ (1 - loss) first
 * reaches κ · MOR (κ share of clear-wood strength, MOR modulus of rupture, Pa); the roots give way
 * at a turning moment m · dbh^b · (1 - share of root plate lost) (N m). Since drag grows as U^n,
 * the critical gust is U0 / exposure · (strength / load)^(1/n), m/s. Thin tops count as limbs, not
 * as the stem.
 */
public final class TrunkResistance implements Process {
  @Override
  public String name() {
    return "trunk resistance";
  }

  @Override
  public List<String> sources() {
    return List.of("huang2017", "peltola2000");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of();
  }

  @Override
  public void run(YearContext context) {
    if (!context.state.vitality.alive) {
      return;
    }
    StrengthParameters p = context.parameters.strength();
    WindLoad wind = context.wind;
    boolean evergreen = context.parameters.species().evergreen();
    double strengthPa =
        p.stemStrengthShare() * context.parameters.species().modulusOfRuptureMpa() * 1e6;
    double exposure = context.site.windExposure;
    double anchorage = anchorageNm(context.state, p);
    for (int season = 0; season < 2; season++) {
      boolean inLeaf = season == 0;
      if (!inLeaf && evergreen) {
        wind.stemLeaflessMs = wind.stemInLeafMs;
        wind.rootLeaflessMs = wind.rootInLeafMs;
        return;
      }
      double load = worstLoad(context.state, wind, p, inLeaf);
      double stem = CriticalGust.of(p, inLeaf, exposure, strengthPa, load);
      double root = CriticalGust.of(p, inLeaf, exposure, anchorage, wind.baseMomentNm);
      if (inLeaf) {
        wind.stemInLeafMs = stem;
        wind.rootInLeafMs = root;
      } else {
        wind.stemLeaflessMs = stem;
        wind.rootLeaflessMs = root;
      }
    }
  }

  private static double anchorageNm(TreeState state, StrengthParameters p) {
    double dbh = Math.max(0, state.trunk.dbhM());
    double whole = 1e3 * p.anchorageKnm() * Fast.pow(dbh, p.anchorageExponent());
    return whole * Math.max(0, 1 - state.roots.plateLost);
  }

  // Largest bending stress at the reference speed, Pa; leaves the moment at the ground and the
  // worst
  // station behind. The load is summed from the top down: shear, then moment.
  private static double worstLoad(
      TreeState state, WindLoad wind, StrengthParameters p, boolean inLeaf) {
    Trunk trunk = state.trunk;
    double least = p.trunkTopShare() * trunk.radiusAtM(Trunk.BREAST_HEIGHT_M);
    double shear = 0;
    double moment = 0;
    double worst = 0;
    double worstDecayed = -1;
    wind.worstStation = inLeaf ? 0 : wind.worstStation;
    double[] load = inLeaf ? wind.loadInLeafM2 : wind.loadLeaflessM2;
    double[] turn = inLeaf ? wind.turnInLeafM3 : wind.turnLeaflessM3;
    double pressure = p.loadPa() * p.dragCoefficient() * (inLeaf ? 1 : p.leaflessShare());
    for (int s = trunk.stations - 1; s >= 0; s--) {
      moment += shear * Trunk.STATION_STEP_M + pressure * turn[s];
      shear += pressure * load[s];
      if (trunk.radiusM[s] < least) {
        continue;
      }
      double radius = trunk.radiusM[s];
      double kept = Math.max(1e-6, 1 - state.sections.strengthLoss[s]);
      double stress = moment / (Math.PI / 4 * radius * radius * radius * kept);
      if (stress > worst) {
        worst = stress;
        if (inLeaf && worstDecayed < 0) {
          wind.worstStation = s;
        }
      }
      if (inLeaf && state.sections.decayed[s] && stress > worstDecayed) {
        worstDecayed = stress;
        wind.worstStation = s;
      }
    }
    wind.baseMomentNm = moment;
    return worst;
  }
}
