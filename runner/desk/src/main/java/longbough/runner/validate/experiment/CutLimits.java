package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;
import longbough.model.history.VisitRow;
import longbough.model.parameter.PruningParameters;
import longbough.model.process.YearContext;
import longbough.model.pruning.Operation;
import longbough.model.state.Limbs;
import longbough.model.state.Trunk;
import longbough.model.visit.CrownMeasure;
import longbough.runner.validate.lab.Edge;
import longbough.runner.validate.lab.FreshTree;
import longbough.runner.validate.lab.Lab;

/**
 * L03, L05 to L07, P23a and P23b: raising a lime of 30 cm step by step; its lowest limb taken off
 * at one thickness after the other; reduction by one depth after the other, to laterals; many small
 * and few large cuts on a lime of 60 cm. Limbs are given the thickness that the check asks for.
 */
public final class CutLimits implements Experiment {
  private static final String LIME = "tilia-cordata";
  private static final double LEAST = 0.05;

  @Override
  public List<String> checks() {
    return List.of("L03", "L05", "L06", "L07", "P23a", "P23b");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(
        raising(checks.get("L03")),
        parent(checks.get("L05")),
        lateral(checks.get("L06")),
        largest(checks.get("L07")),
        volume(checks.get("P23a")),
        areas(checks.get("P23b")));
  }

  private static Finding raising(Check check) {
    FreshTree tree = FreshTree.of(LIME, 0.3);
    Edge ratio = Edge.NONE;
    Edge lost = Edge.NONE;
    double height = tree.stand().state.heightM();
    for (double to = LEAST; to < 0.8 * height; to += LEAST) {
      YearContext standing = tree.stand();
      double before = standing.state.heightM() - standing.state.crownBaseM();
      VisitRow row = perform(standing, new Operation.Raise(to, Double.NaN));
      double after = standing.state.heightM() - standing.state.crownBaseM();
      if (row.cuts() > 0) {
        ratio = ratio.with(-standing.state.liveCrownRatio(), warned(row, "two thirds"));
        lost = lost.with(1 - after / before, warned(row, "at once"));
      }
    }
    boolean met = ratio.at(-2.0 / 3, LEAST) && lost.at(0.15, LEAST);
    return new Judged(
            check,
            "A lime of 30 cm raised in steps of 5 cm; limbs come off one by one, so edges lie"
                + " between two limbs.")
        .claim(
            "live crown ratio " + ratio.below() + "; share at once " + lost.above(),
            "warns below two thirds of the height, and above 0.15 at once",
            met,
            ratio.ordered() && lost.ordered());
  }

  private static Finding parent(Check check) {
    FreshTree tree = FreshTree.of(LIME, 0.4);
    Edge edge = Edge.NONE;
    for (double share = 0.2; share < 0.6; share += 0.01) {
      YearContext standing = tree.stand();
      int limb = lowest(standing.state.limbs);
      double parent = 2 * standing.state.trunk.radiusAtM(standing.state.limbs.heightM[limb]);
      edge = edge.with(share, warned(takeLowest(standing, share * parent), "as wide as the trunk"));
    }
    return new Judged(
            check, "The lowest limb of a lime of 40 cm, given one thickness after the other.")
        .claim(edge.above(), "warns above 0.333", edge.at(1.0 / 3, LEAST), edge.ordered());
  }

  private static Finding lateral(Check check) {
    FreshTree tree = FreshTree.of(LIME, 0.4);
    Edge edge = Edge.NONE;
    for (double share = 0.1; share < 0.8; share += 0.01) {
      YearContext standing = tree.stand();
      double ratio = lateralRatio(standing.parameters.pruning(), share);
      VisitRow row = perform(standing, new Operation.Reduce(Double.NaN, share, true));
      edge = edge.with(-ratio, warned(row, "count as"));
    }
    return new Judged(
            check,
            "A lime of 40 cm reduced by 10 to 80 % of its spread; the thickness of side branches along"
                + " a limb is the model's own assumption.")
        .claim(edge.below(), "heading below 0.333", edge.at(-1.0 / 3, LEAST), edge.ordered());
  }

  /** Side branch at the cut over the part removed, when this share of the limb goes. */
  private static double lateralRatio(PruningParameters p, double share) {
    double[] ratios = {p.lateralRatioInner(), p.lateralRatioMiddle(), p.lateralRatioOuter()};
    double position = 1 - share;
    for (int zone = 1; zone < Limbs.ZONES; zone++) {
      double below = Limbs.zonePosition(zone - 1);
      double above = Limbs.zonePosition(zone);
      if (position <= above) {
        double step = Math.max(0, (position - below) / (above - below));
        return (ratios[zone - 1] + step * (ratios[zone] - ratios[zone - 1])) / share;
      }
    }
    return ratios[Limbs.OUTER] / share;
  }

  private static Finding largest(Check check) {
    Edge weak = cuts("aesculus-hippocastanum");
    Edge strong = cuts("quercus-robur");
    return new Judged(
            check,
            "The lowest limb of a horse-chestnut (weak) and an oak (strong) of 60 cm, one thickness"
                + " after the other.")
        .claim(
            "weak " + weak.above() + " cm; strong " + strong.above() + " cm",
            "warns above 5 and above 10 cm",
            weak.at(5, 0.6) && strong.at(10, 0.6),
            weak.ordered() && strong.ordered() && weak.warnsFrom() < strong.warnsFrom());
  }

  private static Edge cuts(String species) {
    FreshTree tree = FreshTree.of(species, 0.6);
    Edge edge = Edge.NONE;
    for (double cm = 2; cm < 15; cm += 0.5) {
      edge = edge.with(cm, warned(takeLowest(tree.stand(), cm / 100), "largest cut"));
    }
    return edge;
  }

  private static Finding volume(Check check) {
    double lost = CrownMeasure.volumeLost(0.12, 0.12);
    return new Judged(check, "The formula by which the model warns about reductions.")
        .number(lost, check.holds(lost));
  }

  private static Finding areas(Check check) {
    boolean many = areaWarned(48, 0.05);
    boolean few = areaWarned(4, 0.20);
    return new Judged(check, "A lime of 60 cm with 48 limbs of 5 cm, or 4 of 20 cm, all taken off.")
        .claim(
            "48 cuts of 5 cm "
                + (many ? "warned about" : "quiet")
                + "; 4 cuts of 20 cm "
                + (few ? "warned about" : "quiet"),
            !many && few);
  }

  private static boolean areaWarned(int count, double diameterM) {
    YearContext tree = FreshTree.of(LIME, 0.6).stand();
    Limbs limbs = tree.state.limbs;
    int model = lowest(limbs);
    double heightM = limbs.heightM[model];
    for (int limb = 0; limb < Limbs.MAX; limb++) {
      if (limb < count) {
        limbs.status[limb] = limbs.status[model];
        limbs.baseDiameterM[limb] = diameterM;
        limbs.heightM[limb] = heightM;
      } else {
        limbs.clear(limb);
      }
    }
    limbs.count = count;
    VisitRow row = perform(tree, new Operation.Raise(heightM + Trunk.STATION_STEP_M, Double.NaN));
    return warned(row, "All cuts of the visit together");
  }

  private static VisitRow takeLowest(YearContext tree, double diameterM) {
    Limbs limbs = tree.state.limbs;
    int limb = lowest(limbs);
    limbs.baseDiameterM[limb] = diameterM;
    return perform(tree, new Operation.Raise(Math.nextUp(limbs.heightM[limb]), Double.NaN));
  }

  private static int lowest(Limbs limbs) {
    int lowest = -1;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb) && (lowest < 0 || limbs.heightM[limb] < limbs.heightM[lowest])) {
        lowest = limb;
      }
    }
    return lowest;
  }

  private static VisitRow perform(YearContext tree, Operation operation) {
    return FreshTree.perform(tree, Lab.COLLAR, operation);
  }

  private static boolean warned(VisitRow row, String words) {
    return row.warnings().stream().anyMatch(w -> w.contains(words));
  }
}
