package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longbough.model.pruning.Placement;
import longbough.runner.validate.lab.TrunkBench;

/**
 * D13, D14, D17 to D20 and D22: faces of cuts and their closure on a bare trunk, rings of 3.5 mm
 * unless said otherwise. Strong, moderate and modest growth are honey locust, hornbeam and spruce.
 */
public final class WoundClosing implements Experiment {
  private static final double RING_M = 0.0035;
  private static final String SET_UP = "Round wounds on a bare trunk of 40 cm, rings of 3.5 mm.";
  private static final String MODERATE = "carpinus-betulus";

  @Override
  public List<String> checks() {
    return List.of("D13", "D14", "D17", "D18", "D19", "D20", "D22");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double collar = face(Placement.COLLAR);
    double flush = face(Placement.FLUSH);
    String faces = "A cut of 3 cm; the ratios are the source's own figures taken over.";
    double linden = years("tilia-cordata");
    return List.of(
        new Judged(checks.get("D13"), faces).number(collar, collar < flush),
        new Judged(checks.get("D14"), faces).number(flush, flush > 1.15 * collar),
        rings(checks.get("D17")),
        oneSeason(checks.get("D18")),
        tenCentimetres(checks.get("D19"), linden),
        new Judged(checks.get("D20"), SET_UP).number(linden, linden > years("fagus-sylvatica")),
        seasons(checks.get("D22")));
  }

  private static double face(Placement placement) {
    TrunkBench bench = TrunkBench.of(MODERATE);
    int w = bench.cut(placement, 0.03);
    return bench.wounds.faceWidthM[w] / bench.wounds.cutDiameterM[w];
  }

  private static Finding rings(Check check) {
    double slow = closedM(MODERATE, 0.002, 5, 1);
    double fast = closedM(MODERATE, 0.006, 5, 1);
    boolean holds = fast > slow && slow / 0.002 > fast / 0.006 && fast > 0.006;
    return new Judged(check, "Hornbeam, wound of 20 cm, rings of 2 and 6 mm.")
        .claim(
            f(
                "%.1f and %.1f mm a year; %.1f and %.1f per mm of ring",
                1000 * slow, 1000 * fast, slow / 0.002, fast / 0.006),
            holds);
  }

  private static Finding oneSeason(Check check) {
    double[] asked = {17.5, 12.7, 9.5};
    String[] species = {"gleditsia-triacanthos", MODERATE, "picea-abies"};
    double[] got = new double[asked.length];
    boolean met = true;
    for (int i = 0; i < asked.length; i++) {
      for (double mm = 5; mm < 40; mm += 0.1) {
        got[i] = years(species[i], mm / 1000) == 1 ? mm : got[i];
      }
      met &= Math.abs(got[i] - asked[i]) <= 0.15 * asked[i] && years(species[i], 0.025) > 1;
    }
    return new Judged(check, SET_UP)
        .claim(
            f("%.1f / %.1f / %.1f mm", got[0], got[1], got[2]),
            "17.5 / 12.7 / 9.5 mm within 15 % each; 25 mm stays open",
            met,
            got[0] > got[1] && got[1] > got[2],
            IntStream.range(0, got.length)
                .mapToObj(i -> Reading.near(got[i], asked[i], 0.15 * asked[i]))
                .toList());
  }

  private static Finding tenCentimetres(Check check, double linden) {
    double[] got = {
      years("fraxinus-excelsior"),
      years("fagus-sylvatica"),
      years("acer-pseudoplatanus"),
      years(MODERATE)
    };
    boolean met = true;
    double least = linden;
    for (double value : got) {
      met &= check.holds(value);
      least = Math.min(least, value);
    }
    return new Judged(check, SET_UP + " No alder in the library.")
        .claim(
            f(
                "ash %.0f, beech %.0f, maple %.0f, hornbeam %.0f years",
                got[0], got[1], got[2], got[3]),
            "4 to 8 years each; never under 3",
            met,
            least >= 3,
            check.readings(got));
  }

  private static Finding seasons(Check check) {
    double spring = closedM(MODERATE, RING_M, 5, 2);
    double summer = closedM(MODERATE, RING_M, 7, 2);
    double winter = closedM(MODERATE, RING_M, 2, 2);
    double autumn = closedM(MODERATE, RING_M, 10, 2);
    boolean holds = spring > summer && summer > winter && winter > autumn;
    return new Judged(check, "Hornbeam, wound of 20 cm, closure in two years.")
        .claim(
            f(
                "spring %.0f, summer %.0f, winter %.0f, autumn %.0f mm",
                1000 * spring, 1000 * summer, 1000 * winter, 1000 * autumn),
            holds);
  }

  private static double years(String species) {
    return years(species, 0.10);
  }

  private static int years(String species, double widthM) {
    TrunkBench bench = TrunkBench.of(species);
    return bench.yearsToClose(bench.barkWound(widthM), RING_M);
  }

  private static double closedM(String species, double ringM, int month, int years) {
    TrunkBench bench = TrunkBench.of(species);
    int w = bench.barkWound(0.2);
    bench.wounds.month[w] = month;
    bench.years(years, ringM);
    return 0.2 - bench.wounds.openWidthM[w];
  }
}
