package longbough.runner.scenario;

import java.util.List;
import longbough.model.parameter.AllocationParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.tree.MeasuredTree.OldWound;
import longbough.runner.scenario.written.WrittenPruning;
import longbough.runner.scenario.written.WrittenTopping;
import longbough.runner.scenario.written.WrittenTree;
import longbough.runner.yaml.Plain;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * What the tree went through before today, in the terms in which the model starts a tree:
 *
 * <pre>
 * dieback d     condition c with  d = (1 - c)^p
 * topping       old cut across the trunk at its height
 * last pruning  share of the shoots still missing  m = q (1 - r)^t
 * </pre>
 *
 * p the power by which a tree of a given condition starts with a share of its crown lost for good
 * ({@code parameters/decline.csv}), r the yearly return of lost buds in full vigour ({@code
 * parameters/allocation.csv}), q the share of the foliage taken t years ago. Where both condition
 * and dieback are given, the worse of the two holds. A topping cut that nobody measured is as wide
 * as the trunk would be there on a straight taper from breast height to the present top: an
 * assumption.
 */
final class EarlierHarm {
  private static final double CM_PER_M = 100;
  private static final double BREAST_HEIGHT_M = 1.3;
  private static final double LEAST_CUT_CM = 0.5;

  private final WrittenTree tree;
  private final Notes notes;
  private final AllocationParameters allocation;
  private final double startPower;
  private final boolean conifer;

  EarlierHarm(WrittenTree tree, SpeciesTraits species, Notes notes) {
    this.tree = tree;
    this.notes = notes;
    this.conifer = species.conifer();
    ModelParameters parameters =
        ModelParameters.of(species, ParameterLibrary.general().with(species.numbers()));
    this.allocation = parameters.allocation();
    this.startPower = parameters.decline().startPower();
  }

  /** Condition at the start, from the word for it and from dieback. */
  double condition() {
    if (!tree.dieback().present()) {
      return notes.level(tree.condition(), "Condition", "condition", "good", "");
    }
    double dieback = notes.level(tree.dieback(), "Dieback", "dieback", "none", "");
    double answering = 1 - StrictMath.pow(dieback, 1 / startPower);
    if (!tree.condition().present()) {
      double good = Presets.word("condition", "good");
      double taken = Math.min(good, answering);
      notes.add(
          "Condition not given: "
              + Plain.number(taken)
              + " taken, "
              + (taken < answering
                  ? "'good', which the dieback allows."
                  : "at which a tree starts with as much of its crown lost for good."));
      return taken;
    }
    double rated = notes.level(tree.condition(), "Condition", "condition", "good", "");
    if (answering < rated) {
      notes.add(
          "Dieback of "
              + Plain.percent(dieback)
              + " is worse than the condition says: "
              + Plain.number(answering)
              + " taken.");
    }
    return Math.min(rated, answering);
  }

  /** Each topping as an old cut. */
  List<OldWound> toppingCuts() {
    return tree.topped().stream().map(this::cut).toList();
  }

  private OldWound cut(WrittenTopping topping) {
    double height = topping.heightM().value();
    double diameterCm = topping.cutDiameterCm().or(taperedCm(height));
    notes.add(
        "Topped at "
            + Plain.number(height)
            + " m "
            + Plain.number(topping.yearsAgo().value())
            + " years ago: read as a cut of "
            + Plain.number(diameterCm)
            + " cm across the trunk"
            + (topping.cutDiameterCm().present() ? "" : " (by taper, not measured)")
            + ", taken as closed; that limbs grown since hang on weaker is not in the model.");
    return new OldWound(height, diameterCm / CM_PER_M, topping.yearsAgo().value(), 0, 0);
  }

  private double taperedCm(double heightM) {
    double above = (tree.heightM().value() - heightM) / (tree.heightM().value() - BREAST_HEIGHT_M);
    double wide = tree.trunkDiameterCm().value() * Math.max(0, Math.min(1, above));
    return Math.max(LEAST_CUT_CM, Math.rint(10 * wide) / 10);
  }

  /** Share of the shoots that the last pruning took and that has not come back. */
  double foliageMissing() {
    if (tree.lastPruned().isEmpty()) {
      return 0;
    }
    WrittenPruning pruning = tree.lastPruned().get();
    double years = pruning.yearsAgo().value();
    double rate = conifer ? allocation.budRecoveryConifer() : allocation.budRecovery();
    double missing = pruning.foliageRemoved().value() * StrictMath.pow(1 - rate, years);
    notes.add(
        "Pruned "
            + Plain.number(years)
            + " years ago by "
            + Plain.percent(pruning.foliageRemoved().value())
            + " of the foliage: "
            + Plain.percent(missing)
            + " taken as still missing at the start.");
    return missing;
  }
}
