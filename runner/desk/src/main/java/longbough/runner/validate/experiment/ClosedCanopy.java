package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.runner.validate.lab.BoxCrown;
import longbough.runner.validate.lab.Lab;

/**
 * F26 extinction of a closed crown, F27 the Beer-Lambert limit, F29 light caught at leaf area index
 * 5, F30 light passed by hardwood stands: the model's light grid filled as a flat, wide canopy and
 * lit from straight above, since published coefficients fold in the sun's heights.
 */
public final class ClosedCanopy implements Experiment {
  private static final double[] LEAF_INDEX = {0.5, 1, 2, 3, 4, 5, 6};
  private static final String GRID =
      "The light grid as a flat canopy lit from straight above, leaves at random, no wood";

  @Override
  public List<String> checks() {
    return List.of("F26", "F27", "F29", "F30");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(extinction(checks.get("F26")), law(), caught(), passed(checks.get("F30")));
  }

  private static Finding extinction(Check check) {
    double broadleaf = effective("fagus-sylvatica");
    double conifer = effective("picea-abies");
    return new Finding(
        "F26",
        String.format(Locale.ROOT, "%.2f broadleaf, %.2f conifer", broadleaf, conifer),
        "0.35 to 0.70",
        check.holds(broadleaf) && check.holds(conifer),
        conifer < broadleaf,
        "A flat canopy of leaf area index 4 of beech and of Norway spruce, clumped and with wood as in"
            + " the model, lit from straight above: -ln(light passed) over leaf area index.",
        check.readings(broadleaf, conifer));
  }

  private static double effective(String species) {
    ModelParameters p = modelled(species);
    return -Math.log(BoxCrown.flat(4, p).passedShare(p)) / 4;
  }

  private static Finding law() {
    ModelParameters p = random("fagus-sylvatica");
    ModelParameters own = modelled("fagus-sylvatica");
    double k = p.species().extinctionCoefficient();
    double worst = 0;
    double before = 0;
    boolean rises = true;
    for (double leafIndex : LEAF_INDEX) {
      double caught = BoxCrown.flat(leafIndex, p).caughtShare();
      worst = Math.max(worst, Math.abs(caught - (1 - Math.exp(-k * leafIndex))));
      rises &= caught > before && caught < 1;
      before = caught;
    }
    double most = BoxCrown.flat(6, own).caughtShare();
    return new Finding(
        "F27",
        String.format(
            Locale.ROOT,
            "off by up to %.4f; %.3f caught at index 6 with the model's clumping and wood",
            worst,
            most),
        "1 - exp(-k L) within 1e-6",
        worst <= 1e-6,
        rises && worst < 0.01,
        GRID
            + ", leaf area index 0.5 to 6; the weaker claim taken as rising, below 1, within 0.01.");
  }

  private static Finding caught() {
    double broadleaf = BoxCrown.flat(5, random("fagus-sylvatica")).caughtShare();
    double needle = BoxCrown.flat(5, random("picea-abies")).caughtShare();
    return new Finding(
        "F29",
        String.format(Locale.ROOT, "%.4f / %.4f", broadleaf, needle),
        "0.948 / 0.895 within 0.001",
        Math.abs(broadleaf - 0.948) <= 0.001 && Math.abs(needle - 0.895) <= 0.001,
        broadleaf > needle && Math.abs(broadleaf - 0.948) < 0.01 && Math.abs(needle - 0.895) < 0.01,
        GRID
            + ", beech (k 0.59) and Norway spruce (k 0.45); the weaker claim taken as within 0.01.");
  }

  private static Finding passed(Check check) {
    ModelParameters p = modelled("acer-rubrum");
    double thin = BoxCrown.flat(4.3, p).passedShare(p);
    double dense = BoxCrown.flat(5.4, p).passedShare(p);
    return new Finding(
        "F30",
        String.format(Locale.ROOT, "%.3f at index 4.3, %.3f at 5.4", thin, dense),
        "0.02 to 0.12",
        check.holds(thin) && check.holds(dense),
        dense < thin,
        "A flat canopy of red maple, clumped and with wood as in the model, lit from straight above.",
        check.readings(thin, dense));
  }

  private static ModelParameters random(String species) {
    LightParameters own = lab(species).meanParameters().light();
    return BoxCrown.parameters(lab(species), own.with(BoxCrown.ZENITH, 1, 0));
  }

  private static ModelParameters modelled(String species) {
    LightParameters own = lab(species).meanParameters().light();
    return BoxCrown.parameters(
        lab(species), own.with(BoxCrown.ZENITH, own.clumping(), own.woodAreaShare()));
  }

  private static Lab lab(String species) {
    return Lab.of(species, 0.4, Lab.MARITIME, 1, 1);
  }
}
