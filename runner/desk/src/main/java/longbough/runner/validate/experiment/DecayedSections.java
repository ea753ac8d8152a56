package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import longbough.model.geometry.HollowSection;
import longbough.model.geometry.ResidualStrength;
import longbough.model.geometry.SectionModulus;
import longbough.model.geometry.SectorGrid;
import longbough.model.parameter.WindProfile;
import longbough.model.state.Sections;
import longbough.model.state.SectorHoles;

/**
 * S01 to S07 and S14: what hollow and decayed sections keep, by the model's own quadrature on its
 * polar grid and by its formulas.
 */
public final class DecayedSections implements Experiment {
  private static final double RADIUS_M = 0.25;
  private static final SectionModulus SECTION = new SectionModulus(SectorGrid.STANDARD);
  private static final String GRID = "The model's own quadrature, on the polar grid of its trunk.";
  private static final String FORMULA = "The model's own formula.";

  @Override
  public List<String> checks() {
    return List.of("S01", "S02", "S03", "S04", "S05", "S06", "S07", "S14");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    SectorHoles hollow = shell(0.7, 0);
    double area = SECTION.areaFraction(missing(hollow), 0, RADIUS_M);
    double modulus = loss(hollow);
    double wind = 20 * WindProfile.speedShare(20, 0.03);
    Check s01 = checks.get("S01");
    Check s02 = checks.get("S02");
    Check s14 = checks.get("S14");
    return List.of(
        new Judged(s01, GRID).number(area, s01.holds(area)),
        new Judged(s02, GRID).number(modulus, s02.holds(modulus)),
        formulas(checks.get("S03")),
        nearTheEdge(checks.get("S04")),
        offset(checks.get("S05")),
        openShells(checks.get("S06")),
        cavity(checks.get("S07")),
        new Judged(s14, FORMULA).number(wind, s14.holds(wind)));
  }

  private static Finding formulas(Check check) {
    double[] got = {
      ResidualStrength.fourthPower(0.6),
      ResidualStrength.thirdPower(0.6),
      ResidualStrength.withOpening(0.6, 0)
    };
    boolean met = near(got, new double[] {0.13, 0.22, 0.22}, 0.005);
    return new Judged(check, FORMULA)
        .claim(three(got), "0.13 / 0.22 / 0.22, within 0.005 each", met, met);
  }

  private static Finding nearTheEdge(Check check) {
    double got = new HollowSection(1, Math.sqrt(0.18), 0.265).secondMomentLoss();
    double centred = ResidualStrength.fourthPower(Math.sqrt(0.18));
    return new Judged(check, "Parallel-axis theorem, as the model holds it.")
        .number(got, f("%.3f by (d/D)^4", centred), got > 2 * centred && centred < 0.05);
  }

  private static Finding offset(Check check) {
    double[] offsets = {0, 0.05, 0.10};
    double[] got =
        Arrays.stream(offsets).map(e -> new HollowSection(0.5, 0.3, e).modulusLoss()).toArray();
    boolean met = near(got, new double[] {0.130, 0.299, 0.583}, 0.002);
    return new Judged(check, "Parallel-axis theorem, as the model holds it.")
        .claim(three(got), "0.130 / 0.299 / 0.583, within 0.002 each", met, met);
  }

  private static Finding openShells(Check check) {
    double little = loss(shell(0.6, 0.10));
    double wide = loss(shell(0.7, 0.30));
    boolean met = Math.abs(little - 0.361) <= 0.015 && Math.abs(wide - 0.723) <= 0.015;
    boolean above =
        little > ResidualStrength.withOpening(0.6, 0.10)
            && wide > ResidualStrength.withOpening(0.7, 0.30);
    return new Judged(check, GRID)
        .claim(
            f("%.3f / %.3f", little, wide),
            "0.361 / 0.723, within 0.015, above the formula",
            met && above,
            above);
  }

  private static SectorHoles shell(double ratio, double openShare) {
    int n = Sections.SECTORS;
    SectorHoles holes = new SectorHoles(n);
    for (int k = 0; k < n; k++) {
      double angle = 2 * Math.PI * k / n;
      holes.add(k, 0, ratio * RADIUS_M);
      if (Math.min(angle, 2 * Math.PI - angle) < openShare * Math.PI) {
        holes.open(k, ratio * RADIUS_M);
      }
    }
    return holes;
  }

  private static double[] missing(SectorHoles holes) {
    double[] moments = new double[SectionModulus.MOMENTS];
    SECTION.missing(holes, 0, RADIUS_M, moments, 0);
    return moments;
  }

  private static double loss(SectorHoles holes) {
    return SECTION.loss(holes, 0, SECTION.open(holes, 0), missing(holes), 0, RADIUS_M);
  }

  /** Against the published expression written out, over a grid of both ratios. */
  private static Finding cavity(Check check) {
    double worst = 0;
    for (double d = 0.1; d < 1; d += 0.1) {
      for (double r = 0; r <= 0.5; r += 0.1) {
        double asGiven = Math.pow(d, 3) + r * (1 - Math.pow(d, 3));
        worst = Math.max(worst, Math.abs(ResidualStrength.withOpening(d, r) - asGiven));
      }
    }
    boolean met = worst < 1e-12;
    return new Judged(check, FORMULA)
        .claim(f("largest difference %.1e", worst), "as given, exact", met, met);
  }

  private static boolean near(double[] got, double[] asked, double within) {
    for (int i = 0; i < got.length; i++) {
      if (Math.abs(got[i] - asked[i]) > within) {
        return false;
      }
    }
    return true;
  }

  private static String three(double[] got) {
    return f("%.3f / %.3f / %.3f", got[0], got[1], got[2]);
  }
}
