package longbough.runner.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.model.parameter.Climate;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Visit;
import longbough.model.tree.MeasuredTree;
import longbough.runner.wish.Wishes;
import longbough.runner.yaml.Plain;

/** What was understood of a scenario, as lines for a person to compare with what was meant. */
public final class ScenarioSummary {

  private static final double CM_PER_M = 100;

  private final SimulationInput input;
  private final List<String> lines = new ArrayList<>();

  private ScenarioSummary(SimulationInput input) {
    this.input = input;
  }

  /** The lines for an input. */
  public static List<String> lines(SimulationInput input) {
    ScenarioSummary summary = new ScenarioSummary(input);
    summary.head();
    summary.filledIn();
    summary.regimes();
    return List.copyOf(summary.lines);
  }

  /** The lines for what the client wants. */
  public static List<String> lines(Wishes wishes) {
    List<String> lines =
        new ArrayList<>(
            List.of(
                "",
                "wishes, by year "
                    + wishes.byYear()
                    + " and kept until year "
                    + wishes.untilYear()
                    + ":"));
    wishes.asked().forEach(wish -> lines.add("  " + WishWords.of(wish)));
    return lines;
  }

  private void head() {
    lines.add(input.title());
    item("tree", tree(input.tree()));
    item("defects", defects(input.tree()));
    item(
        "site",
        "openness "
            + Plain.number(input.site().openness())
            + ", soil water "
            + Plain.number(input.site().soilWaterCapacityMm())
            + " mm, wind exposure "
            + Plain.number(input.site().windExposure())
            + ", growth factor "
            + Plain.number(input.site().growthFactor()));
    item("climate", climate(input.climate()));
    item(
        "crew",
        Plain.number(input.crew().pricePerHour())
            + " "
            + input.crew().currency()
            + " an hour, later costs discounted by "
            + Plain.percent(input.crew().discountRate())
            + " a year");
    item(
        "run",
        input.years() + " years, " + input.members() + " futures per regime, seed " + input.seed());
  }

  private String tree(MeasuredTree tree) {
    return input.species().commonName()
        + " ("
        + input.species().scientificName()
        + "), trunk "
        + cm(tree.dbhM())
        + ", height "
        + m(tree.heightM())
        + ", crown base "
        + m(tree.crownBaseM())
        + ", "
        + spread(tree.spreadM())
        + leader(tree.leaderGrowthM())
        + ", condition "
        + Plain.number(tree.condition())
        + (tree.limbs().isEmpty() ? "" : ", " + tree.limbs().size() + " limbs in the inventory");
  }

  private static String leader(double growthM) {
    return Double.isNaN(growthM) ? "" : ", leading shoot " + cm(growthM) + " a year";
  }

  private static String spread(double[] spreadM) {
    if (Arrays.stream(spreadM).allMatch(value -> value == spreadM[0])) {
      return "spread " + m(spreadM[0]);
    }
    return "reach north "
        + m(spreadM[0] / 2)
        + ", east "
        + m(spreadM[1] / 2)
        + ", south "
        + m(spreadM[2] / 2)
        + ", west "
        + m(spreadM[3] / 2);
  }

  private static String defects(MeasuredTree tree) {
    List<String> parts = new ArrayList<>();
    tree.cavities()
        .forEach(
            cavity ->
                parts.add(
                    "cavity at "
                        + m(cavity.heightM())
                        + " with "
                        + cm(cavity.soundWallM())
                        + " of sound wall"));
    tree.oldWounds()
        .forEach(
            wound ->
                parts.add("wound of " + cm(wound.cutDiameterM()) + " at " + m(wound.heightM())));
    if (tree.foliageMissing() > 0) {
      parts.add(Plain.percent(tree.foliageMissing()) + " of the shoots missing since a pruning");
    }
    if (tree.rootPlateLost() > 0) {
      parts.add(Plain.percent(tree.rootPlateLost()) + " of the root plate lost");
    }
    return parts.isEmpty() ? "none known" : String.join("; ", parts);
  }

  private static String climate(Climate climate) {
    return climate.name()
        + ", latitude "
        + Plain.number(climate.latitudeDeg())
        + ", "
        + Plain.number(
            Math.rint(10 * Arrays.stream(climate.temperatureC()).average().orElseThrow()) / 10)
        + " degC and "
        + Plain.number(Math.rint(Arrays.stream(climate.rainMm()).sum()))
        + " mm of rain in the mean year";
  }

  private void filledIn() {
    lines.add("");
    lines.add("filled in:");
    input.filledIn().forEach(sentence -> lines.add("  " + sentence));
  }

  private void regimes() {
    lines.add("");
    lines.add("regimes (the others are measured against the first):");
    for (Regime regime : input.regimes()) {
      lines.add("  " + regime.name() + (regime.visits().isEmpty() ? ": no visits" : ""));
      regime.visits().forEach(this::visit);
    }
  }

  private void visit(Visit visit) {
    lines.add("    " + VisitWords.when(visit, input.years()) + ", cuts " + VisitWords.cuts(visit));
    for (Operation operation : visit.operations()) {
      lines.add("      " + OperationWords.of(operation));
    }
  }

  private void item(String label, String text) {
    lines.add("  " + label + " ".repeat(Math.max(1, 9 - label.length())) + text);
  }

  private static String m(double metres) {
    return Plain.number(metres) + " m";
  }

  private static String cm(double metres) {
    return Plain.number(metres * CM_PER_M) + " cm";
  }
}
