package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.history.Flow;
import longbough.model.parameter.CarbonParameters;
import longbough.model.process.Maintenance;
import longbough.model.process.RootRenewal;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.Bench;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * F25 Q10 of wood and leaves and growth respiration, F34 a cubic metre of conifer sapwood, F35
 * growth against maintenance in a beech stem: the maintenance process alone, on a tree held still.
 */
public final class Respiration implements Experiment {
  private static final double WARM_C = 20;
  private static final double COOL_C = 10;
  private static final int WARM_MONTH = 7;
  private static final int COOL_MONTH = 6;
  private static final List<String> CONIFERS =
      List.of("pinus-sylvestris", "picea-abies", "pseudotsuga-menziesii");
  private static final int FROM = 9;
  private static final int TO = 10;

  @Override
  public List<String> checks() {
    return List.of("F25", "F34", "F35");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(warmth(), sapwood(checks.get("F34")), beech(checks.get("F35")));
  }

  private static Finding warmth() {
    Lab lab = Lab.of("picea-abies", 0.4, Lab.MARITIME, 1, 1);
    double wood = woodQ10(lab);
    double leaves = needles(lab, WARM_MONTH) / needles(lab, COOL_MONTH);
    double growth = growthRespiration(lab);
    boolean in = within(wood, 1.8, 2.3) && within(leaves, 1.8, 2.3) && within(growth, 0.20, 0.30);
    return new Finding(
        "F25",
        String.format(
            Locale.ROOT, "Q10 wood %.2f, leaves %.2f; %.2f kg C per kg C", wood, leaves, growth),
        "Q10 1.8 to 2.3, both; 0.20 to 0.30",
        in,
        wood > 1 && leaves > 1 && within(growth, 0.20, 0.30),
        "A Norway spruce of 40 cm: its trunk held a year at 20 and at 10 degC, its needles in a month"
            + " of 20 and one of 10 degC in turn, so that both have grown at 15 degC; growth"
            + " respiration as booked where fine roots are renewed; the weaker claim taken as a rise"
            + " with warmth and growth respiration within.",
        List.of(
            new Reading(wood, 1.8, 2.3),
            new Reading(leaves, 1.8, 2.3),
            new Reading(growth, 0.20, 0.30)));
  }

  /** Respiration of the needles in a month of warm and cool months in turn, kg C. */
  private static double needles(Lab lab, int month) {
    Maintenance maintenance = new Maintenance(lab.site());
    Bench tree = leavesOnly(lab).inTurn(WARM_C, COOL_C);
    Bench trunk = Bench.trunk(lab, lab.start()).inTurn(WARM_C, COOL_C);
    return tree.monthKgC(maintenance, Flow.MAINTENANCE, month)
        - trunk.monthKgC(maintenance, Flow.MAINTENANCE, month);
  }

  /** A bench whose living parts are the trunk and the leaves. */
  private static Bench leavesOnly(Lab lab) {
    Bench bench = Bench.inLeaf(lab);
    TreeState state = bench.context.state;
    state.limbs.count = 0;
    state.pools.coarseRootKgC = 0;
    state.pools.fineRootKgC = 0;
    return bench;
  }

  private static double woodQ10(Lab lab) {
    return maintenance(Bench.trunk(lab, lab.start()).at(WARM_C), lab)
        / maintenance(Bench.trunk(lab, lab.start()).at(COOL_C), lab);
  }

  private static double maintenance(Bench bench, Lab lab) {
    return bench.yearKgC(new Maintenance(lab.site()), Flow.MAINTENANCE);
  }

  private static double growthRespiration(Lab lab) {
    Bench bench = Bench.inLeaf(lab);
    bench.context.state.pools.growthBudgetKgC = 1000;
    bench.context.ledger.open(0);
    new RootRenewal().run(bench.context);
    return bench.context.ledger.amountKgC(Flow.GROWTH_RESPIRATION)
        / bench.context.ledger.builtKgC();
  }

  private static Finding sapwood(Check check) {
    StringBuilder got = new StringBuilder();
    boolean in = true;
    List<Reading> readings = new ArrayList<>();
    for (String species : CONIFERS) {
      double respired = cubicMetre(Lab.of(species, 0.1, Lab.MARITIME, 1, 1));
      in &= check.holds(respired);
      readings.addAll(check.readings(respired));
      got.append(got.isEmpty() ? "" : " / ").append(String.format(Locale.ROOT, "%.1f", respired));
    }
    double q10 = woodQ10(Lab.of(CONIFERS.get(0), 0.1, Lab.MARITIME, 1, 1));
    return new Finding(
        "F34",
        got + String.format(Locale.ROOT, " kg C; Q10 %.1f", q10),
        "1.5 to 4.0 kg C; Q10 1.5 to 2.1",
        in,
        within(q10, 1.5, 2.1),
        "A cubic metre of living sapwood of Scots pine, Norway spruce and Douglas-fir, thin enough to"
            + " respire to the pith, held a year at 10 degC.",
        readings);
  }

  private static double cubicMetre(Lab lab) {
    TreeState state = lab.start();
    CarbonParameters carbon = lab.meanParameters().carbon();
    state.pools.trunkSapwoodKgC =
        lab.meanParameters().species().woodDensityKgM3() * carbon.woodCarbon();
    state.pools.trunkHeartwoodKgC = 0;
    state.trunk.sapwoodShare = 1;
    return maintenance(Bench.trunk(lab, state).at(COOL_C), lab);
  }

  private static Finding beech(Check check) {
    Lab lab = Lab.of("fagus-sylvatica", 0.2, Lab.MARITIME, TO, 10);
    double perKgC = growthRespiration(lab);
    Played played = lab.alone(FROM, TO);
    double share =
        played.meanOf(
            TO,
            h -> {
              TreeState before = h.snapshots().get(FROM);
              TreeState after = h.snapshots().get(TO);
              double growth = perKgC * (stemKgC(after) - stemKgC(before));
              return growth / (growth + maintenance(Bench.trunk(lab, before), lab));
            });
    return new Finding(
        "F35",
        String.format(
            Locale.ROOT, "%.2f kg C per kg C; %.2f of the stem's respiration", perKgC, share),
        "0.15 to 0.30; about half (taken as 0.35 to 0.65)",
        check.holds(perKgC),
        within(share, 0.35, 0.65),
        "Open-grown beech of 20 cm, maritime climate, tenth year, 10 futures; growth respiration of the"
            + " stem's yearly wood against the maintenance of the same stem in the mean year.",
        check.readings(perKgC));
  }

  private static double stemKgC(TreeState state) {
    return state.pools.trunkSapwoodKgC + state.pools.trunkHeartwoodKgC;
  }

  private static boolean within(double value, double low, double high) {
    return value >= low && value <= high;
  }
}
