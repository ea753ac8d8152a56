package longbough.model.process;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import longbough.model.numeric.Fast;
import longbough.model.parameter.StrengthParameters;
import longbough.model.parameter.WindProfile;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;

/**
 * Where the wind takes hold of the crown.
 *
 * <p>Drag area in leaf A = A0 (1 - exp(-k L / A0)) with A0 the crown's outline seen from the side
 * (an ellipse over crown length and widest reach, m2), L leaf area (m2), k porosity (-): leaves
 * shelter one another. It lies where the leaves lie: each zone of a limb, each cohort of sprouts,
 * has its share at its own height, and loads the trunk where the limb or the shoots are attached.
 * Drag at gust U (m/s at 10 m) is F = ½ρ Cd U0² A (U / U0)^n (u(z) / u(10 m))^n with reference
 * speed U0 (m/s) and n below 2 because crowns streamline; leafless, A times a share with n near 2
 * (strength checks S12 to S14). Writes only its scratch.
 */
public final class WindLoading implements Process {
  private final LimbAngles angles = new LimbAngles();
  private WindProfile profile;

  @Override
  public String name() {
    return "wind loading";
  }

  @Override
  public List<String> sources() {
    return List.of("vollsinger2005", "dragtests");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of();
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    WindLoad wind = context.wind;
    Arrays.fill(wind.loadInLeafM2, 0);
    Arrays.fill(wind.loadLeaflessM2, 0);
    Arrays.fill(wind.turnInLeafM3, 0);
    Arrays.fill(wind.turnLeaflessM3, 0);
    wind.centreM = 0;
    double leafM2 = state.leafAreaM2();
    if (!state.vitality.alive || !(leafM2 > 0)) {
      return;
    }
    double perLeaf = dragAreaM2(state, context.parameters.strength(), leafM2) / leafM2;
    profile = context.parameters.strength().profile();
    double moment = limbs(state, wind, perLeaf) + trunkSprouts(state, wind, perLeaf);
    wind.centreM = moment / (perLeaf * leafM2);
    wind.areaPerLeafArea = perLeaf;
  }

  private double dragAreaM2(TreeState state, StrengthParameters p, double leafM2) {
    Limbs limbs = state.limbs;
    double reach = 0;
    double top = state.trunk.heightM;
    double base = state.trunk.heightM;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        double length = limbs.lengthM[limb];
        double rise = length * angles.cos(limbs, limb);
        reach = Math.max(reach, length * length - rise * rise);
        top = Math.max(top, limbs.heightM[limb] + rise);
        base = Math.min(base, limbs.heightM[limb]);
      }
    }
    double outline = Math.PI / 4 * 2 * Math.sqrt(reach) * (top - base);
    double least = outline > 0 ? outline : leafM2;
    return least * (1 - Fast.exp(-p.crownPorosity() * leafM2 / least));
  }

  private double limbs(TreeState state, WindLoad wind, double perLeaf) {
    Limbs limbs = state.limbs;
    double moment = 0;
    for (int limb = 0; limb < limbs.count; limb++) {
      double rise = limbs.lengthM[limb] * angles.cos(limbs, limb);
      int at = state.trunk.stationBelow(limbs.heightM[limb]);
      for (int zone = 0; zone < Limbs.ZONES; zone++) {
        double height = limbs.heightM[limb] + rise * Limbs.zonePosition(zone);
        moment += add(wind, at, height, perLeaf * limbs.leafAreaM2[limb * Limbs.ZONES + zone]);
      }
      double height = limbs.heightM[limb] + rise * state.sprouts.position[limb];
      moment += add(wind, at, height, perLeaf * state.sprouts.leafAreaM2[limb]);
    }
    return moment;
  }

  private double trunkSprouts(TreeState state, WindLoad wind, double perLeaf) {
    double moment = 0;
    for (int cohort = Limbs.MAX; cohort < Sprouts.MAX; cohort++) {
      double leafM2 = state.sprouts.leafAreaM2[cohort];
      if (leafM2 > 0) {
        double foot = Math.min(Sprouts.trunkHeightM(cohort), state.trunk.heightM);
        int at = state.trunk.stationBelow(foot);
        moment += add(wind, at, foot + state.sprouts.lengthM[cohort] / 2, perLeaf * leafM2);
      }
    }
    return moment;
  }

  /** Puts leaves into the wind of their height, which the trunk feels where they are attached. */
  private double add(WindLoad wind, int at, double heightM, double areaM2) {
    if (!(areaM2 > 0)) {
      return 0;
    }
    int station = Trunk.stationNear(heightM);
    double arm = (station - at) * Trunk.STATION_STEP_M;
    double inLeaf = areaM2 * profile.inLeaf(station);
    double leafless = areaM2 * profile.leafless(station);
    wind.loadInLeafM2[at] += inLeaf;
    wind.turnInLeafM3[at] += inLeaf * arm;
    wind.loadLeaflessM2[at] += leafless;
    wind.turnLeaflessM3[at] += leafless * arm;
    return areaM2 * heightM;
  }
}
