package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Placement;
import longbough.model.state.Wounds;
import longbough.runner.validate.lab.GeneralNumbers;
import longbough.runner.validate.lab.TrunkBench;

/**
 * D16, D21, D23, D24 and D25: shapes of closing wounds, their pace with age, stubs of living and
 * dead branches, and a large cut that has closed over decay. Bare trunks of 40 cm.
 */
public final class ClosureInTime implements Experiment {
  private static final double RING_M = 0.0035;
  private static final String MODERATE = "carpinus-betulus";

  @Override
  public List<String> checks() {
    return List.of("D16", "D21", "D23", "D24", "D25");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(
        shapes(checks.get("D16")),
        age(checks.get("D21")),
        stubs(checks.get("D23")),
        dressing(checks.get("D24")),
        hidden(checks.get("D25")));
  }

  private static Finding shapes(Check check) {
    TrunkBench bench = TrunkBench.of(MODERATE);
    int collar = bench.cut(Placement.COLLAR, 0.1);
    int flush = bench.cut(Placement.FLUSH, 0.1);
    int stub = bench.cut(Placement.STUB, 0.1);
    bench.years(3, RING_M);
    Wounds w = bench.wounds;
    double side = 500 * (w.faceWidthM[flush] - w.openWidthM[flush]);
    double end = 500 * (w.faceHeightM[flush] - w.openHeightM[flush]);
    double ringSide = 500 * (w.faceWidthM[collar] - w.openWidthM[collar]);
    double ringEnd = 500 * (w.faceHeightM[collar] - w.openHeightM[collar]);
    boolean holds =
        side > 2 * end
            && Math.abs(ringSide - ringEnd) < 0.1 * ringSide
            && w.openWidthM[stub] >= w.cutDiameterM[stub]
            && w.openWidthM[collar] < w.cutDiameterM[collar];
    return new Judged(check, "Hornbeam, cuts of 10 cm, woundwood after three years.")
        .claim(
            f(
                "flush %.0f mm a side, %.0f mm at each end; collar %.0f and %.0f mm; stub %.0f mm over"
                    + " its end",
                side,
                end,
                ringSide,
                ringEnd,
                500 * Math.max(0, w.cutDiameterM[stub] - w.openWidthM[stub])),
            holds);
  }

  private static Finding age(Check check) {
    double[] got = new double[3];
    int[] ages = {5, 10, 15};
    for (int i = 0; i < got.length; i++) {
      TrunkBench bench = TrunkBench.of(MODERATE);
      int w = bench.barkWound(0.3);
      bench.years(ages[i], RING_M);
      got[i] = 1000 * (0.3 - bench.wounds.openWidthM[w]) / ages[i];
    }
    return new Judged(
            check,
            "Hornbeam, wound of 30 cm, so that none has closed; the source gives no size, hence only"
                + " the order is judged.")
        .claim(
            f("%.1f / %.1f / %.1f mm a year", got[0], got[1], got[2]),
            got[0] > got[1] && got[1] > got[2]);
  }

  private static Finding stubs(Check check) {
    int living = years(false);
    int dead = years(true);
    return new Judged(
            check,
            "Birch, stubs of 15 cm on branches of 3 cm, rings of 3.5 mm; the living collar's height was"
                + " set in sight of this source.")
        .claim(f("living %d, dead %d years", living, dead), living < dead);
  }

  private static int years(boolean dead) {
    TrunkBench bench = TrunkBench.of("betula-pendula");
    int w = dead ? bench.deadStub(0.03, 0) : bench.cut(Placement.STUB, 0.03);
    return bench.yearsToClose(w, RING_M);
  }

  /** Nothing in the model could hear of a dressing; a number for one would make this row fail. */
  private static Finding dressing(Check check) {
    List<String> named = new ArrayList<>();
    GeneralNumbers.table().rows().forEach(row -> named.add(row.name()));
    for (Class<?> operation : Operation.class.getPermittedSubclasses()) {
      named.add(operation.getSimpleName().toLowerCase(Locale.ROOT));
    }
    long heard =
        named.stream()
            .filter(n -> n.contains("dressing") || n.contains("paint") || n.contains("seal"))
            .count();
    return new Judged(
            check,
            "Met by construction: the crew carries no dressing and no equation of closure or decay"
                + " has a term for one. No experiment was played.")
        .claim(heard == 0 ? "no influence" : heard + " terms for a dressing", heard == 0);
  }

  private static Finding hidden(Check check) {
    TrunkBench bench = TrunkBench.of("fagus-sylvatica");
    int w = bench.cut(Placement.COLLAR, 0.2);
    int years = bench.yearsToClose(w, RING_M);
    int station = (int) Math.round(TrunkBench.WOUND_M * 2);
    double closed = bench.context.state.sections.strengthLoss[station];
    double elsewhere =
        bench.context.state.sections.strengthLoss[bench.context.state.trunk.stations - 2];
    bench.years(10, RING_M);
    double later = bench.columnM(w);
    return new Judged(
            check,
            "Beech, collar cut of 20 cm, rings of 3.5 mm. A bare trunk bears no crown: what is shown"
                + " is that the section behind the closed wound is the weak one.")
        .claim(
            f(
                "closed after %d years; %.2f of the strength is lost behind it, none higher up; column"
                    + " %.1f m",
                years, closed, later),
            !bench.wounds.open(w) && closed > 0.05 && closed > elsewhere);
  }
}
