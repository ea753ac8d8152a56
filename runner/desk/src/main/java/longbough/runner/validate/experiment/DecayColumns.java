package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.pruning.Placement;
import longbough.runner.validate.lab.TrunkBench;

/**
 * D01, D03 to D12 and D15: decay columns in a bare trunk with rings of a chosen width. Collar cuts
 * keep within the branch core while the column is no wider than the branch.
 */
public final class DecayColumns implements Experiment {
  private static final String SPRUCE = "picea-abies";
  private static final String WEAK = "aesculus-hippocastanum";
  private static final double RING_M = 0.003;
  private static final String BENCH =
      "A bare trunk of %s, rings of 3 mm, reserve 0.7 of its ceiling.";

  @Override
  public List<String> checks() {
    return List.of(
        "D01", "D03", "D04", "D05", "D06", "D07", "D08", "D09", "D10", "D11", "D12", "D15");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    TrunkBench spruce = TrunkBench.of(SPRUCE, 0.224, 14);
    int w = spruce.barkWound(0.2);
    spruce.years(10, 0.001);
    double length = spruce.columnM(w);
    double areaCm2 = 1e4 * spruce.decayedM2(4);
    double slim = length / Math.sqrt(areaCm2 / 1e4 / Math.PI);
    String wide =
        "Spruce of 22 cm with a bark wound of 20 cm, rings of 1 mm; the decay parameters of"
            + " its class were set in sight of this source.";
    double small = yearNineOverOne(0.03);
    double large = yearNineOverOne(0.12);
    return List.of(
        barrier(checks.get("D01")),
        walls(checks.get("D03")),
        reserve(checks.get("D04")),
        new Judged(checks.get("D05"), wide).number(length, length > 1),
        new Judged(checks.get("D06"), wide).number(areaCm2, areaCm2 > 0),
        new Judged(checks.get("D07"), wide).number(slim, slim > 10),
        saturation(checks.get("D08")),
        heartRot(checks.get("D09")),
        new Judged(checks.get("D10"), f(BENCH, "horse-chestnut")).number(small, small < large),
        new Judged(checks.get("D11"), f(BENCH, "horse-chestnut")).number(large, large > small),
        branchToParent(checks.get("D12")),
        placement(checks.get("D15")));
  }

  private static Finding barrier(Check check) {
    TrunkBench bench = TrunkBench.of(WEAK);
    double first = 2 * bench.context.state.trunk.radiusAtM(TrunkBench.WOUND_M);
    bench = TrunkBench.of(WEAK, 0.4 * 0.2 / first, 14);
    double atWound = 2 * bench.context.state.trunk.radiusAtM(TrunkBench.WOUND_M);
    bench.cut(Placement.FLUSH, 0.1);
    double widest = 0;
    for (int year = 0; year < 80; year++) {
      bench.years(1, 0.002);
      widest = Math.max(widest, 200 * Math.sqrt(bench.decayedM2(4) / Math.PI));
    }
    boolean met = widest <= 100 * atWound * (1 + 1e-9);
    return new Judged(
            check,
            "Horse-chestnut, 20 cm at the wound, flush cut of 10 cm, 80 years of 2 mm rings; diameter of"
                + " a disc as large as the decay at 2 m.")
        .number(widest, met);
  }

  private static Finding walls(Check check) {
    TrunkBench bench = TrunkBench.of("tilia-cordata");
    int w = bench.cut(Placement.FLUSH, 0.12);
    bench.years(1, RING_M);
    double axial = bench.wounds.columnDownM[w];
    double radial = bench.wounds.columnDepthM[w];
    double tangential = bench.wounds.columnHalfWidthM[w];
    bench.years(10, RING_M);
    axial = bench.wounds.columnDownM[w] - axial;
    radial = bench.wounds.columnDepthM[w] - radial;
    tangential = bench.wounds.columnHalfWidthM[w] - tangential;
    boolean zone = bench.wounds.columnDepthM[w] <= bench.wounds.parentRadiusM[w];
    return new Judged(
            check,
            f(BENCH, "lime") + " Growth of the column of a flush cut of 12 cm over ten years.")
        .claim(
            f(
                "%.0f mm axial, %.0f mm radial, %.0f mm tangential, barrier %s",
                1000 * axial, 1000 * radial, 1000 * tangential, zone ? "kept" : "passed"),
            "axial < radial < tangential < barrier zone in resistance",
            axial > radial && radial > tangential && zone,
            axial > radial && radial > tangential && zone);
  }

  private static Finding reserve(Check check) {
    double poor = flushDecay(TrunkBench.of(WEAK).reserve(0.15));
    double rich = flushDecay(TrunkBench.of(WEAK));
    return new Judged(check, f(BENCH, "horse-chestnut") + " Flush cut of 8 cm after six years.")
        .claim(
            f("%.2f times the decay at 0.15 of the reserve ceiling", poor / rich),
            check.direction(),
            poor > rich,
            poor > rich,
            List.of(Reading.atLeast(poor / rich, 1)));
  }

  private static double flushDecay(TrunkBench bench) {
    bench.cut(Placement.FLUSH, 0.08);
    return bench.years(6, RING_M).decayedM3();
  }

  private static Finding saturation(Check check) {
    TrunkBench ash = TrunkBench.of("fraxinus-excelsior");
    ash.context.state.trunk.sapwoodShare = 1;
    int w = ash.barkWound(0.1);
    double seven = ash.years(7, RING_M).columnM(w);
    double eight = ash.years(1, RING_M).columnM(w);
    double ratio = ash.years(9, RING_M).columnM(w) / ((seven + eight) / 2);
    return new Judged(check, f(BENCH, "ash, all sapwood,")).number(ratio, ratio < 17 / 7.5);
  }

  private static Finding heartRot(Check check) {
    TrunkBench spruce = TrunkBench.of(SPRUCE);
    spruce.context.state.trunk.sapwoodShare = 0.3;
    int w = spruce.barkWound(0.2);
    spruce.wounds.heightM[w] = 6;
    spruce.wounds.heartwood[w] = true;
    double twenty = spruce.years(20, 0).columnM(w);
    double thirty = spruce.years(10, 0).columnM(w);
    double forty = spruce.years(10, 0).columnM(w);
    double rate = 100 * (forty - twenty) / 20;
    double early = thirty - twenty;
    boolean linear = Math.abs(forty - thirty - early) < 0.25 * early;
    return new Judged(check, "Spruce of 40 cm, heartwood laid open, years 20 to 40.")
        .number(rate, linear);
  }

  private static double yearNineOverOne(double diameterM) {
    TrunkBench bench = TrunkBench.of(WEAK);
    int w = bench.cut(Placement.COLLAR, diameterM);
    double one = bench.years(1, RING_M).columnM(w);
    return bench.years(8, RING_M).columnM(w) / one;
  }

  private static Finding branchToParent(Check check) {
    String oak = spread("quercus-virginiana");
    String maple = spread("acer-rubrum");
    boolean met = oak.equals("no yes yes") && maple.equals("no no yes");
    boolean rises =
        oak.startsWith("no")
            && oak.endsWith("yes")
            && maple.startsWith("no")
            && maple.endsWith("yes");
    return new Judged(
            check,
            "Live oak and red maple of 6 cm, collar cuts of 0.30, 0.50 and 0.90 of the"
                + " trunk, five years; severe is a column wider than the branch.")
        .claim("oak " + oak + ", maple " + maple, "oak no yes yes, maple no no yes", met, rises);
  }

  private static String spread(String species) {
    StringBuilder text = new StringBuilder();
    for (double ratio : new double[] {0.30, 0.50, 0.90}) {
      TrunkBench bench = TrunkBench.of(species, 0.06, 6);
      double parent = 2 * bench.context.state.trunk.radiusAtM(TrunkBench.WOUND_M);
      int w = bench.cut(Placement.COLLAR, ratio * parent);
      bench.years(5, RING_M);
      boolean severe = bench.wounds.columnHalfWidthM[w] > bench.wounds.cutDiameterM[w] / 2;
      text.append(severe ? " yes" : " no");
    }
    return text.substring(1);
  }

  private static Finding placement(Check check) {
    TrunkBench collar = TrunkBench.of("quercus-rubra");
    collar.cut(Placement.COLLAR, 0.08);
    TrunkBench flush = TrunkBench.of("quercus-rubra");
    int w = flush.cut(Placement.FLUSH, 0.08);
    double none = 1e3 * collar.years(6, RING_M).decayedM3();
    double much = 1e3 * flush.years(6, RING_M).decayedM3();
    return new Judged(check, f(BENCH, "red oak") + " Cuts of 8 cm after six years.")
        .claim(
            f(
                "%.2f l of decay in the trunk after the collar cut, %.2f l and %.2f m after the flush cut",
                none, much, flush.columnM(w)),
            "none against a long column; flush far worse inside",
            none == 0 && flush.columnM(w) > 0.5,
            much > 2 * none && much > 0,
            List.of(Reading.atLeast(flush.columnM(w), 0.5)));
  }
}
