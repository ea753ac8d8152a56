package longbough.runner.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import longbough.runner.validate.experiment.Check;
import longbough.runner.validate.experiment.Experiment;
import longbough.runner.validate.experiment.Finding;
import longbough.runner.validate.lab.GeneralNumbers;
import longbough.shared.quantity.Range;
import longbough.shared.source.Basis;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;

/**
 * Invented parameters and checks whose truth is known: the checks ask for what A = 0.62 and B = 7.5
 * give; C moves nothing that is asked for.
 */
public final class ToyTrees {
  static final double TRUE_A = 0.62;
  static final double TRUE_B = 7.5;

  private final Map<String, Check> checks = new LinkedHashMap<>();
  private final List<Experiment> experiments = new ArrayList<>();

  ToyTrees() {
    asks("T1", t -> t.value("toy.a") * 10, TRUE_A * 10);
    asks("T2", t -> t.value("toy.a") * t.value("toy.b"), TRUE_A * TRUE_B);
    asks("T3", t -> t.value("toy.b") + 1, TRUE_B + 1);
    asks("T4", t -> 5, 9);
    asks("K1", t -> t.value("toy.a") + t.value("toy.b"), TRUE_A + TRUE_B);
  }

  static ParameterTable table() {
    return ParameterTable.of(
        List.of(row("toy.a", 0.3, 0.1, 0.9), row("toy.b", 3, 2, 12), row("toy.c", 0.5, 0, 1)));
  }

  static Sourced row(String name, double value, double low, double high) {
    return new Sourced(
        name, value, "1", new Range(low, high), false, Basis.ASSUMPTION, "", "invented");
  }

  /** One experiment that asks for a value within a tenth. */
  private void asks(String id, ToDoubleFunction<ParameterTable> model, double truth) {
    Check check =
        new Check(id, "toy", "", "", "", "", 0.9 * truth, 1.1 * truth, "1", "", "", "invented");
    checks.put(id, check);
    experiments.add(
        new Experiment() {
          @Override
          public List<String> checks() {
            return List.of(id);
          }

          @Override
          public List<Finding> run(Map<String, Check> all) {
            double got = model.applyAsDouble(GeneralNumbers.table());
            boolean in = check.holds(got);
            return List.of(
                new Finding(id, "" + got, check.band(), in, true, "", check.readings(got)));
          }
        });
  }

  /** One that breaks where A is large. */
  ToyTrees withOneThatBreaks() {
    asks(
        "T5",
        t -> {
          if (t.value("toy.a") > 0.8) {
            throw new IllegalStateException("no tree is left");
          }
          return 1;
        },
        1);
    return this;
  }

  FitResult fit(int threads) throws InterruptedException {
    return Fit.run(plan(threads), experiments, checks, done -> {});
  }

  FitResult screen() throws InterruptedException {
    return Fit.screen(plan(2), experiments, checks, done -> {});
  }

  /** A fit of two threads, for tests of what is written about it. */
  public static FitResult fitted() throws InterruptedException {
    return new ToyTrees().fit(2);
  }

  /** The same with real parameters in the place of A and B, whose values are as given. */
  public static Fitted fitted(FreeParameter parameter, double after) {
    return new Fitted(parameter, after, 1, Map.of("T1", -0.5, "T2", 0.7, "T3", 0.001));
  }

  private FitPlan plan(int threads) {
    List<FreeParameter> axes =
        table().rows().stream().map(row -> new FreeParameter(row, "invented")).toList();
    Space space = new Space(axes, table());
    Set<String> training = new TreeSet<>(checks.keySet());
    training.remove("K1");
    return new FitPlan(space, space.start(), training, Set.of("K1"), 3, 200, threads);
  }
}
