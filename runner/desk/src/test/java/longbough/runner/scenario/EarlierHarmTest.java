package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import longbough.model.Simulation;
import longbough.model.SimulationInput;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class EarlierHarmTest {
  private static final Offset<Double> CLOSE = Offset.offset(1e-9);

  @Test
  void diebackSetsTheConditionUnlessThatIsWorse() {
    assertThat(tree("").tree().condition()).isEqualTo(0.85);
    assertThat(tree("dieback: none").tree().condition()).isEqualTo(0.85);
    // a quarter of the crown lost for good: 1 - 0.25^(1/2)
    assertThat(tree("dieback: moderate").tree().condition()).isCloseTo(0.5, CLOSE);
    assertThat(tree("dieback: 0.9").tree().condition()).isBetween(0.05, 0.06);
    assertThat(tree("dieback: moderate, condition: good").tree().condition()).isCloseTo(0.5, CLOSE);
    assertThat(tree("dieback: moderate, condition: poor").tree().condition()).isEqualTo(0.35);
    assertThat(tree("dieback: moderate, condition: good").filledIn())
        .anyMatch(line -> line.contains("Dieback of 25 % is worse than the condition says"));
  }

  @Test
  void aToppingIsAnOldCutAcrossTheTrunk() {
    SimulationInput measured =
        tree(
            "topped: [{height_m: 10, years_ago: 12, cut_diameter_cm: 21}, {height_m: 9, years_ago: 2}]");
    assertThat(measured.tree().oldWounds()).hasSize(2);
    assertThat(measured.tree().oldWounds().get(0).cutDiameterM()).isCloseTo(0.21, CLOSE);
    assertThat(measured.tree().oldWounds().get(0).ageYears()).isEqualTo(12);
    // 48 cm at 1.3 m, nothing at 17 m, straight between: 24.5 cm at 9 m
    assertThat(measured.tree().oldWounds().get(1).cutDiameterM()).isCloseTo(0.245, CLOSE);
    assertThat(measured.filledIn())
        .anyMatch(line -> line.contains("hang on weaker is not in the model"));
  }

  @Test
  void whatThePruningTookIsMissingAndComesBack() {
    SimulationInput now = tree("last_pruned: {years_ago: 0, foliage_removed: 0.4}");
    assertThat(now.tree().foliageMissing()).isCloseTo(0.4, CLOSE);
    double before = new Simulation(tree("")).startLeafAreaM2();
    double after = new Simulation(now).startingTree().limbs.leafAreaM2();
    double whole = new Simulation(tree("")).startingTree().limbs.leafAreaM2();
    assertThat(after / whole).isCloseTo(0.6, Offset.offset(1e-6));
    assertThat(before).isPositive();
    double later =
        tree("last_pruned: {years_ago: 6, foliage_removed: 0.4}").tree().foliageMissing();
    assertThat(later).isBetween(0.01, 0.2);
    assertThat(new Simulation(now).startingTree().vitality.decline)
        .isEqualTo(new Simulation(tree("")).startingTree().vitality.decline);
  }

  @Test
  void notesReachTheReport() {
    assertThat(tree("notes: \"bats in June\"").filledIn())
        .contains("Noted on site, not used by the model: bats in June");
  }

  @Test
  void aCrownNobodyMeasuredIsThatOfAMiddlingTree() {
    SimulationInput input =
        resolve("tree: {species: tilia-cordata, trunk_diameter_cm: 48, height_m: 17}");
    TypicalSize typical = TypicalSize.of(input.species(), 48);
    assertThat(input.tree().spreadM()).containsOnly(typical.crownSpreadM());
    assertThat(typical.crownSpreadM()).isBetween(6.0, 14.0);
    assertThat(typical.heightM()).isBetween(9.0, 20.0);
    assertThat(typical.crownBaseM()).isCloseTo(0.3 * typical.heightM(), Offset.offset(0.1));
  }

  private static SimulationInput tree(String more) {
    String rest = more.isEmpty() ? "" : ", " + more;
    return resolve(
        "tree: {species: tilia-cordata, trunk_diameter_cm: 48, height_m: 17, crown_spread_m: 10"
            + rest
            + "}");
  }

  private static SimulationInput resolve(String tree) {
    String text =
        tree + "\nclimate: maritime_temperate\nregimes: [{name: leave alone, visits: []}]\n";
    return ScenarioResolver.resolve(ScenarioReader.parse("test", text));
  }
}
