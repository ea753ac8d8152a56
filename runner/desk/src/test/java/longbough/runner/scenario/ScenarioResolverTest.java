package longbough.runner.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.SimulationInput;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Visit;
import longbough.model.pruning.Where;
import longbough.model.tree.MeasuredTree;
import org.junit.jupiter.api.Test;

class ScenarioResolverTest {

  private static final String LEAST =
      """
      tree: {species: Tilia cordata, trunk_diameter_cm: 20, height_m: 7, crown_spread_m: 5}
      climate: mediterranean
      regimes:
        - name: work
          visits:
            - every_years: 4
              operations:
                - remove_deadwood: {}
                - thin: {share: 0.1}
                - reduce: {spread_share: 0.2}
                - strip_sprouts: {}
            - when: {measure: open_wound_cm2, below: 50}
              cuts: {flush: 1}
              operations: [{top: {at_height_share: 0.5}}]
      """;

  @Test
  void whatIsGivenArrivesInSiUnits() {
    SimulationInput input = resolve(BadScenario.GOOD);
    assertThat(input.title()).isEqualTo("A tree for the tests");
    MeasuredTree tree = input.tree();
    assertThat(tree.dbhM()).isEqualTo(0.48);
    assertThat(tree.crownBaseM()).isEqualTo(2.5);
    assertThat(tree.spreadM()).containsExactly(11, 11, 11, 11);
    assertThat(tree.condition()).isEqualTo(0.85);
    assertThat(tree.cavities()).containsExactly(new MeasuredTree.KnownCavity(1, 2, 0.09, 0, 0.05));
    assertThat(tree.oldWounds()).containsExactly(new MeasuredTree.OldWound(3, 0.2, 10, 0, 0.04));
    assertThat(tree.rootPlateLost()).isEqualTo(0.1);
    assertThat(tree.limbs())
        .containsExactly(
            new MeasuredTree.MeasuredLimb(4, 0.12, Double.NaN, Double.NaN, Double.NaN, false),
            new MeasuredTree.MeasuredLimb(2, 0.09, Double.NaN, Double.NaN, Double.NaN, true));
    assertThat(input.site().soilWaterCapacityMm()).isEqualTo(120);
    assertThat(input.crew()).isEqualTo(new SimulationInput.Crew(60, "EUR", 0.02));
    Visit first = input.regimes().get(1).visits().get(0);
    assertThat(first.timing()).isEqualTo(new Timing.Once(1));
    assertThat(first.cuts()).isEqualTo(new CutMix(0.9, 0.05, 0.05));
    assertThat(first.operations())
        .containsExactly(
            new Operation.Thin(0.2, Where.EVENLY, CutKind.REMOVAL),
            new Operation.Raise(4, Double.NaN),
            new Operation.OpenWindow(4, 8, 10, 90, 0.5));
  }

  @Test
  void reachByDirectionBecomesTwiceItself() {
    String text =
        BadScenario.GOOD.replace(
            "crown_spread_m: 11", "crown_spread_m: {north: 5, east: 6, south: 4, west: 3.5}");
    assertThat(resolve(text).tree().spreadM()).containsExactly(10, 12, 8, 7);
  }

  @Test
  void whatIsLeftOutIsFilledInAndSaid() {
    SimulationInput input = resolve(LEAST);
    assertThat(input.title()).isEqualTo("t");
    assertThat(input.species().id()).isEqualTo("tilia-cordata");
    assertThat(input.tree().crownBaseM()).isEqualTo(2.1);
    assertThat(input.years()).isEqualTo(30);
    assertThat(input.members()).isEqualTo(200);
    assertThat(input.seed()).isEqualTo(1);
    Visit repeated = input.regimes().get(0).visits().get(0);
    assertThat(repeated.timing()).isEqualTo(new Timing.Every(1, 4, 200));
    assertThat(repeated.season()).isEqualTo(Season.WINTER);
    assertThat(repeated.cuts()).isEqualTo(new CutMix(0.75, 0.15, 0.1));
    assertThat(repeated.operations())
        .containsExactly(
            new Operation.RemoveDeadwood(0.03),
            new Operation.Thin(0.1, Where.EVENLY, CutKind.REMOVAL),
            new Operation.Reduce(0, 0.2, true),
            new Operation.StripSprouts(1, CutKind.REMOVAL));
    Visit called = input.regimes().get(0).visits().get(1);
    assertThat(called.timing())
        .isEqualTo(new Timing.When(TriggerMeasure.OPEN_WOUND_CM2, false, 50, 1, 200, 2));
    assertThat(input.filledIn())
        .contains(
            "Crown base not given: 2.1 m taken (30 % of the height, open-grown small-leaved lime).",
            "Length of the run not given: 30 years taken.",
            "Number of futures not given: 200 taken.",
            "Seed not given: 1 taken.",
            "Condition not given: 'good' (0.85) taken.",
            "Openness of the site not given: 'street' (0.7) taken.",
            "Currency not given: EUR taken.",
            "Season not given: winter taken where it is missing.",
            "Wait after a visit that a measure called for not given: 2 years taken.",
            "remove_deadwood: over_cm not given: 3 cm taken.",
            "thin: where not given: evenly taken.",
            "strip_sprouts: share not given: 1 taken.")
        .doesNotHaveDuplicates();
  }

  @Test
  void theLowestLivingLimbIsTheCrownBaseOfAnInventory() {
    String text = BadScenario.GOOD.replace("  crown_base_m: 2.5\n", "");
    assertThat(resolve(text).tree().crownBaseM()).isEqualTo(4);
  }

  @Test
  void everyClimateThatComesAlongIsComplete() {
    assertThat(ClimateLibrary.ids())
        .containsExactlyElementsOf(ScenarioReader.keys().row("scenario", "climate").words());
    for (String id : ClimateLibrary.ids()) {
      String text = LEAST.replace("mediterranean", id);
      var climate = resolve(text).climate();
      assertThat(climate.temperatureC()).hasSize(12);
      assertThat(climate.gustFiftyYearMs()).isGreaterThan(climate.gustTenYearMs());
      assertThat(climate.source())
          .matches(
              ".*temperature: .+ \\((published|from memory)\\); rain: .+radiation: .+gusts: .+");
    }
  }

  @Test
  void everyWordOfTheTableStandsForSomething() {
    for (String key : List.of("openness", "soil_water_mm", "wind_exposure", "growth_factor")) {
      var row = ScenarioReader.keys().row("site", key);
      for (String word : row.words()) {
        assertThat(row.range().contains(Presets.word(key, word))).as(key + " " + word).isTrue();
      }
    }
    for (String word : ScenarioReader.keys().row("tree", "condition").words()) {
      assertThat(Presets.word("condition", word)).isBetween(0.0, 1.0);
    }
    for (String word : ScenarioReader.keys().row("crew", "skill").words()) {
      assertThat(Presets.cuts(word)).isNotNull();
    }
    assertThat(ScenarioReader.keys().row("visit", "cuts").words())
        .isEqualTo(ScenarioReader.keys().row("crew", "skill").words());
  }

  private static SimulationInput resolve(String text) {
    return ScenarioResolver.resolve(ScenarioReader.parse("t.yaml", text));
  }
}
