package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.history.YearColumn;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * U20, U21, U25: shares of branches and leaves in the mass above ground by size, and leaf over
 * sapwood area of conifers, after some years of growth. The measured trees stood mostly in forests,
 * ours in the open, where a trunk carries more branches.
 */
public final class MassByPart implements Experiment {
  private static final int YEARS = 10;
  private static final int FUTURES = 10;
  private static final int FEW_YEARS = 5;

  /** Sizes from which five years lead to some 15, 40 and 65 cm. */
  private static final double[] DBH_M = {0.08, 0.33, 0.585};

  private static final double CONIFER_M = 0.3;
  private static final double CLOSED = 0;

  @Override
  public List<String> checks() {
    return List.of("U20", "U21", "U25");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] branch = new double[DBH_M.length];
    double[] leaf = new double[DBH_M.length];
    double closedIn = 0;
    double[] grown = new double[DBH_M.length];
    for (String species : Trees.DECIDUOUS) {
      for (int i = 0; i < DBH_M.length; i++) {
        Lab lab = Lab.of(species, DBH_M[i], Lab.MARITIME, FEW_YEARS, FUTURES);
        Shares open = Shares.of(lab);
        branch[i] += open.branch / Trees.DECIDUOUS.size();
        leaf[i] += open.leaf / Trees.DECIDUOUS.size();
        grown[i] += open.dbhCm / Trees.DECIDUOUS.size();
        closedIn += i == 1 ? Shares.of(lab.crowded(CLOSED)).branch / Trees.DECIDUOUS.size() : 0;
      }
    }
    String setUp =
        "Norway maple, red oak, small-leaved lime and green ash, open-grown, maritime, 10 futures, after"
            + " five years of growth to "
            + Trees.say(0, grown)
            + " cm.";
    return List.of(
        branches(checks.get("U20"), setUp, branch, closedIn),
        leaves(checks.get("U21"), setUp, leaf),
        conifers(checks.get("U25")));
  }

  private static Finding branches(Check check, String setUp, double[] got, double closedIn) {
    double[] least = Check.numbers(check.lowText());
    boolean held = got[0] >= least[0] && got[1] >= least[1] && got[2] >= least[2];
    return new Judged(check, setUp)
        .claim(
            Trees.say(2, got) + f("; middle size closed in %.2f", closedIn),
            "at least " + check.lowText() + "; " + check.direction(),
            held,
            got[0] < got[1] && got[1] < got[2] && closedIn < got[1],
            List.of(
                Reading.atLeast(got[0], least[0]),
                Reading.atLeast(got[1], least[1]),
                Reading.atLeast(got[2], least[2])));
  }

  private static Finding leaves(Check check, String setUp, double[] got) {
    return new Judged(check, setUp)
        .claim(
            Trees.say(3, got[0], got[1]),
            check.band(),
            check.holdsEach(got[0], got[1]),
            got[1] < got[0],
            check.readings(got[0], got[1]));
  }

  private static Finding conifers(Check check) {
    double douglas = leafOverSapwood("pseudotsuga-menziesii");
    double redwood = leafOverSapwood("sequoia-sempervirens");
    double scots = leafOverSapwood("pinus-sylvestris");
    double jack = leafOverSapwood("pinus-banksiana");
    return new Judged(
            check,
            "Douglas fir and coast redwood (Scots and jack pine for the direction) grown ten years from"
                + " 30 cm, open-grown, maritime, 10 futures.")
        .claim(
            Trees.say(0, douglas, redwood) + f("; pines %.0f and %.0f", scots, jack),
            check.band(),
            check.holdsEach(douglas, redwood),
            scots < douglas && jack < douglas,
            check.readings(douglas, redwood));
  }

  private static double leafOverSapwood(String species) {
    Played grown = Lab.of(species, CONIFER_M, Lab.MARITIME, YEARS, FUTURES).alone(YEARS);
    return grown.mean(YearColumn.LEAF_AREA_M2, YEARS) / grown.meanState(YEARS, MassByPart::sapM2);
  }

  private static double sapM2(TreeState state) {
    double radius = state.trunk.dbhM() / 2;
    return state.trunk.sapwoodShare * Math.PI * radius * radius;
  }

  /** Dry mass of branches and of leaves over that of trunk, branches and leaves. */
  private record Shares(double branch, double leaf, double dbhCm) {
    static Shares of(Lab lab) {
      Played grown = lab.alone(FEW_YEARS);
      double carbon = lab.meanParameters().carbon().woodCarbon();
      double branch = grown.meanState(FEW_YEARS, t -> t.limbs.livingWoodKgC()) / carbon;
      double trunk =
          grown.meanState(FEW_YEARS, t -> t.pools.trunkSapwoodKgC + t.pools.trunkHeartwoodKgC)
              / carbon;
      double leaf = grown.mean(YearColumn.LEAF_AREA_M2, FEW_YEARS) * Trees.leafMassPerAreaKgM2(lab);
      double all = trunk + branch + leaf;
      return new Shares(branch / all, leaf / all, grown.mean(YearColumn.DBH_CM, FEW_YEARS));
    }
  }
}
