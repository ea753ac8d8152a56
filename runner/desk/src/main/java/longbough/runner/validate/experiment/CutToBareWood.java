package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.pruning.Operation.Reduce;
import longbough.model.state.Sprouts;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * P11a, P11b: conifers and a yew cut back to leafless wood. Simplified: every limb is headed to a
 * tenth of its length, behind the foliage; hemlock and juniper are not in the library. Cohort
 * numbers are means, so a cohort counts from half a shoot on.
 */
public final class CutToBareWood implements Experiment {
  private static final List<String> BARREN =
      List.of("pinus-sylvestris", "abies-alba", "thuja-plicata");

  @Override
  public List<String> checks() {
    return List.of("P11a", "P11b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    List<String> each = new ArrayList<>();
    double most = 0;
    for (String species : BARREN) {
      double shoots = shoots(species);
      most = Math.max(most, shoots);
      each.add(String.format(Locale.ROOT, "%.1f", shoots));
    }
    double yew = shoots("taxus-baccata");
    Check b = checks.get("P11b");
    return List.of(
        new Finding(
            "P11a",
            String.join(", ", each) + " shoots",
            "none",
            most == 0,
            most < 1 && most < yew,
            "Scots pine, silver fir and western red cedar of 20 cm" + setUp(),
            List.of(Reading.atMost(most, 0))),
        new Finding(
            "P11b",
            String.format(Locale.ROOT, "%.0f shoots", yew),
            "at least " + b.low(),
            b.holds(yew),
            yew > 0,
            "Yew of 20 cm" + setUp(),
            b.readings(yew)));
  }

  private static String setUp() {
    return ", maritime, 20 futures; all limbs headed to a tenth of their length in winter of year 1;"
        + " shoots at its end where the tree lives, none"
        + " where all have died.";
  }

  private static double shoots(String species) {
    Lab lab = Lab.of(species, 0.20, Lab.MARITIME, 1, 20);
    Played cut = lab.play(Lab.once(1, new Reduce(0.2, 0.9, false)), 1);
    return cut.survival(1) > 0 ? cut.meanState(1, state -> standing(state.sprouts)) : 0;
  }

  private static double standing(Sprouts sprouts) {
    double shoots = 0;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      shoots += sprouts.stands(cohort) ? sprouts.count[cohort] : 0;
    }
    return shoots;
  }
}
