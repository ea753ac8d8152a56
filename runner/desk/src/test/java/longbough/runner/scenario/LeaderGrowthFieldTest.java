package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import longbough.model.SimulationInput;
import longbough.runner.scenario.written.Scenario;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import org.junit.jupiter.api.Test;

/** The growth of the leading shoot, from the file to the model. */
class LeaderGrowthFieldTest {
  private static final String GIVEN = "leader_growth_cm: 45";

  @Test
  void centimetresOfTheFileAreMetresOfTheModel() {
    SimulationInput input = tree(GIVEN);
    assertThat(input.tree().leaderGrowthM()).isCloseTo(0.45, within(1e-12));
    assertThat(input.filledIn()).noneMatch(line -> line.contains("leading shoot"));
    assertThat(ScenarioSummary.lines(input))
        .anyMatch(line -> line.contains("spread 10 m, leading shoot 45 cm a year, condition"));
  }

  @Test
  void whatNobodyMeasuredIsLeftToTheModel() {
    SimulationInput input = tree("condition: good");
    assertThat(input.tree().leaderGrowthM()).isNaN();
    assertThat(input.filledIn())
        .contains(
            "Growth of the leading shoot not given: that of the species at this size, condition and"
                + " light taken.");
    assertThat(ScenarioSummary.lines(input)).noneMatch(line -> line.contains("cm a year"));
  }

  /** Shoots that come after a topping tell nothing of the crown's pace: the value is set aside. */
  @Test
  void aToppedTreeHasNoLeader() {
    SimulationInput input = tree(GIVEN + ", topped: [{height_m: 10, years_ago: 3}]");
    assertThat(input.tree().leaderGrowthM()).isNaN();
    assertThat(input.filledIn())
        .anyMatch(
            line ->
                line.startsWith("Growth of the leading shoot not used: the tree was topped")
                    && line.contains("give the topping as an old wound"));
    assertThat(tree(GIVEN + ", old_wounds: [{height_m: 10, diameter_cm: 20}]").tree())
        .satisfies(tree -> assertThat(tree.leaderGrowthM()).isEqualTo(0.45));
  }

  /** Nothing grows in a year by more than it is high. */
  @Test
  void aLeaderLongerThanTheTreeIsRefused() {
    String whip = "trunk_diameter_cm: 3, height_m: 2, leader_growth_cm: ";
    assertThat(read(whip + 200).tree().leaderGrowthCm().value()).isEqualTo(200);
    InputException refused =
        catchThrowableOfType(InputException.class, () -> read("\n  " + whip + 201));
    assertThat(refused.problems()).hasSize(1);
    Problem problem = refused.problems().get(0);
    assertThat(problem.line()).isEqualTo(2);
    assertThat(problem.field()).isEqualTo("tree.leader_growth_cm");
    assertThat(problem.found()).isEqualTo("201 cm a year on a tree of 2 m");
    assertThat(problem.allowed()).isEqualTo("up to the tree's height");
    assertThat(problem.mend()).contains("grows in one year");
  }

  private static SimulationInput tree(String more) {
    return ScenarioResolver.resolve(
        read("trunk_diameter_cm: 48, height_m: 17, crown_spread_m: 10, " + more));
  }

  private static Scenario read(String tree) {
    String text =
        "tree: {species: tilia-cordata, "
            + tree
            + "}\nclimate: maritime_temperate\nregimes: [{name: leave alone, visits: []}]\n";
    return ScenarioReader.parse("test", text);
  }
}
