package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;
import longbough.model.history.VisitRow;
import longbough.model.process.YearContext;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.Edge;
import longbough.runner.validate.lab.FreshTree;
import longbough.runner.validate.lab.Lab;

/**
 * L01, L02, L04: the share of foliage at which an even thinning is warned about, by stage. Limes of
 * 60, 30 and 10 cm stand for mature, medium and young; the upper end of each published range is
 * what should warn.
 */
public final class DoseLimits implements Experiment {
  private static final String SPECIES = "tilia-cordata";
  private static final double STEP = 0.01;
  private static final double TOLERANCE = 0.03;
  private static final String SET_UP =
      "Limes of 60, 30 and 10 cm (mature, medium, young), in leaf; even thinning in steps of 1 %.";

  @Override
  public List<String> checks() {
    return List.of("L01", "L02", "L04");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    FreshTree mature = FreshTree.of(SPECIES, 0.6);
    FreshTree medium = FreshTree.of(SPECIES, 0.3);
    FreshTree young = FreshTree.of(SPECIES, 0.1);
    Edge season = edge(mature, "in one growing season");
    Edge old = edge(mature, "within twelve months");
    Edge middle = edge(medium, "within twelve months");
    Edge early = edge(young, "within twelve months");
    Edge thinning = edge(young, "Thinning took");
    boolean stressed = warnsWhenStressed(medium);
    boolean stages =
        old.at(0.20, TOLERANCE) && middle.at(0.25, TOLERANCE) && early.at(0.33, TOLERANCE);
    return List.of(
        new Judged(checks.get("L01"), SET_UP)
            .claim(
                season.above(), "warns above 0.25", season.at(0.25, TOLERANCE), season.ordered()),
        new Judged(checks.get("L02"), SET_UP)
            .claim(
                "mature "
                    + old.above()
                    + "; medium "
                    + middle.above()
                    + "; young "
                    + early.above()
                    + "; any cut on a stressed tree "
                    + (stressed ? "warns" : "is quiet"),
                "warns above 0.20, 0.25 and 0.33, and always on a stressed tree",
                stages && stressed,
                old.ordered() && middle.ordered() && early.ordered() && stressed),
        new Judged(checks.get("L04"), SET_UP)
            .claim(
                thinning.above(),
                "warns above 0.30",
                thinning.at(0.30, TOLERANCE),
                thinning.ordered()));
  }

  private static Edge edge(FreshTree tree, String words) {
    Edge edge = Edge.NONE;
    for (double share = STEP; share < 0.5; share += STEP) {
      VisitRow row = thin(tree.stand(), share);
      boolean warned = row.warnings().stream().anyMatch(w -> w.contains(words));
      edge = edge.with(row.foliageRemovedFraction(), warned);
    }
    return edge;
  }

  private static boolean warnsWhenStressed(FreshTree tree) {
    YearContext weak = tree.stand();
    weak.state.pools.reserveKgC = 0.2 * weak.state.pools.reserveCeilingKgC;
    boolean weakWarned = thin(weak, 0.02).warnings().stream().anyMatch(w -> w.contains("stressed"));
    boolean wellWarned =
        thin(tree.stand(), 0.02).warnings().stream().anyMatch(w -> w.contains("stressed"));
    return weakWarned && !wellWarned;
  }

  private static VisitRow thin(YearContext tree, double share) {
    return FreshTree.perform(
        tree, Lab.COLLAR, new Operation.Thin(share, Where.EVENLY, CutKind.REMOVAL));
  }
}
