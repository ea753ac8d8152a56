package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import longbough.model.history.History;
import longbough.model.history.TreeEvent;
import longbough.model.history.YearColumn;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Visit;
import longbough.model.pruning.Where;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/**
 * P14: a young sycamore maple topped, reduced to laterals or thinned by removal cuts in years 1 and
 * 3, the depth set so that each visit takes a third of the foliage. The source topped branch by
 * branch: its cuts "suppressed the primary axis without providing a substitute", while reduction
 * left a lateral to lead. So leader and limbs are shortened alike in both and only the cuts differ.
 */
public final class ToppingAgainstReduction implements Experiment {
  private static final String SPECIES = "acer-pseudoplatanus";
  private static final double DBH_M = 0.08;
  private static final double DOSE = 1.0 / 3;
  private static final int YEARS = 5;
  private static final int MEMBERS = 30;

  @Override
  public List<String> checks() {
    return List.of("P14");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    Played topped = play(share -> new Operation.Reduce(share, share, false));
    Played reduced = play(share -> new Operation.Reduce(share, share, true));
    Played thinned = play(share -> new Operation.Thin(share, Where.EVENLY, CutKind.REMOVAL));
    double[] sprouts = {sprouts(topped), sprouts(reduced), sprouts(thinned)};
    double[] dieback = {dieback(topped), dieback(reduced), dieback(thinned)};
    double[] growth = {
      topped.growthCm(0, YEARS), reduced.growthCm(0, YEARS), thinned.growthCm(0, YEARS)
    };
    boolean holds =
        sprouts[0] > Math.max(sprouts[1], sprouts[2])
            && dieback[0] > Math.max(dieback[1], dieback[2])
            && growth[0] < Math.min(growth[1], growth[2]);
    return List.of(
        new Judged(
                checks.get("P14"),
                "Sycamore maple of 8 cm, maritime, 30 futures of 5 years; visits in winter of years 1"
                    + " and 3; dieback is limbs that died.")
            .claim(
                f(
                    "topped / reduced / thinned at %.2f, %.2f, %.2f of the foliage: sprouts %.1f / %.1f"
                        + " / %.1f; limbs lost %.1f / %.1f / %.1f; growth %.2f / %.2f / %.2f cm",
                    topped.dose(1),
                    reduced.dose(1),
                    thinned.dose(1),
                    sprouts[0],
                    sprouts[1],
                    sprouts[2],
                    dieback[0],
                    dieback[1],
                    dieback[2],
                    growth[0],
                    growth[1],
                    growth[2]),
                checks.get("P14").direction(),
                holds,
                holds,
                List.of(
                    Reading.atLeast(sprouts[0] / Math.max(sprouts[1], sprouts[2]), 1),
                    Reading.atMost(growth[0] / Math.min(growth[1], growth[2]), 1))));
  }

  private static double sprouts(Played played) {
    return played.sum(YearColumn.SPROUT_COUNT, 1, YEARS) / YEARS;
  }

  private static double dieback(Played played) {
    return played.meanOf(YEARS, ToppingAgainstReduction::limbsDead);
  }

  private static double limbsDead(History history) {
    return history.events().stream().filter(e -> e instanceof TreeEvent.LimbDied).count();
  }

  /** The two visits at the depths that take the dose. */
  private static Played play(DoubleFunction<Operation> operation) {
    Visit first =
        Lab.once(1, deepEnough(operation, depth -> lab(1, 1).play(Lab.once(1, depth)).dose(1)));
    Visit second =
        Lab.once(
            3,
            deepEnough(
                operation, depth -> lab(3, 1).play(List.of(first, Lab.once(3, depth))).dose(3)));
    return lab(YEARS, MEMBERS).play(List.of(first, second));
  }

  /** The operation at the depth that takes the dose, found by halving. */
  private static Operation deepEnough(
      DoubleFunction<Operation> operation, ToDoubleFunction<Operation> dose) {
    double low = 0;
    double high = 0.9;
    for (int step = 0; step < 12; step++) {
      double middle = (low + high) / 2;
      if (dose.applyAsDouble(operation.apply(middle)) < DOSE) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return operation.apply((low + high) / 2);
  }

  private static Lab lab(int years, int members) {
    return Lab.of(SPECIES, DBH_M, Lab.MARITIME, years, members);
  }
}
