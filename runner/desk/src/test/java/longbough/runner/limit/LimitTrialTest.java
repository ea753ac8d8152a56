package longbough.runner.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.model.pruning.Season;
import longbough.model.tree.MeasuredTree;
import longbough.runner.compare.EnginePlayer;
import longbough.runner.dose.DryCase;
import longbough.runner.scenario.ScenarioReader;
import longbough.runner.scenario.ScenarioResolver;
import org.junit.jupiter.api.Test;

/** What must hold of the limits of an invented tree, whatever the numbers. */
class LimitTrialTest {
  private static final SimulationInput PINE =
      ScenarioResolver.resolve(ScenarioReader.read(scenarios().resolve("park-pine.yaml")));
  private static final int FUTURES = 40;

  /** With 40 futures a tenth of them is four, and 16 of 20 intervals held: too few to draw anew. */
  private static final int ENOUGH = 100;

  private static final int YEARS = 3;

  @Test
  void repeatsWithinItsIntervalOverTwentySeeds() throws InterruptedException {
    Limit many = limit(PINE, 10 * ENOUGH, 1, "growth");
    int held = 0;
    for (int seed = 2; seed < 22; seed++) {
      Limit one = limit(PINE, ENOUGH, seed, "growth");
      held += one.low() <= many.dose() && many.dose() <= one.high() ? 1 : 0;
    }
    // Of twenty 95 % intervals 19 are expected to hold; 16 and fewer have a chance under 2 %.
    assertThat(held).isGreaterThanOrEqualTo(17);
  }

  @Test
  void aTreeInPoorerConditionBearsNoMore() throws InterruptedException {
    List<Double> doses = new ArrayList<>();
    for (double condition : new double[] {0.2, 0.5, 0.8}) {
      doses.add(limit(inCondition(condition), FUTURES, 8, "reserve").dose());
    }
    assertThat(doses).isSorted();
    assertThat(doses.get(0)).as("the poor tree bears less").isLessThan(doses.get(2));
  }

  @Test
  void drierYearsBearNoMore() throws InterruptedException {
    List<Double> doses = new ArrayList<>();
    for (DryCase dry : List.of(DryCase.TWO_AFTER, DryCase.BY_CHANCE, DryCase.NONE)) {
      doses.add(limit(PINE.with(dry.dryYears()), FUTURES, 8, "reserve").dose());
    }
    assertThat(doses).isSorted();
    assertThat(doses.get(0)).as("two dry years cost").isLessThan(doses.get(2));
  }

  private static Limit limit(SimulationInput input, int futures, long seed, String threshold)
      throws InterruptedException {
    return LimitTrial.play(
            input.playing(input.regimes(), YEARS, futures, seed),
            0.10,
            List.of(Way.THIN_EVENLY),
            List.of(Season.WINTER),
            new EnginePlayer(),
            2,
            done -> {})
        .limit(Way.THIN_EVENLY, Season.WINTER, threshold);
  }

  private static SimulationInput inCondition(double condition) {
    MeasuredTree tree = PINE.tree();
    MeasuredTree other =
        new MeasuredTree(
            tree.dbhM(),
            tree.heightM(),
            tree.crownBaseM(),
            tree.spreadM(),
            condition,
            tree.cavities(),
            tree.oldWounds(),
            tree.rootPlateLost(),
            tree.limbs());
    return new SimulationInput(
        PINE.title(),
        PINE.species(),
        PINE.parameters(),
        other,
        PINE.site(),
        PINE.climate(),
        PINE.dryYears(),
        PINE.regimes(),
        PINE.years(),
        PINE.members(),
        PINE.seed(),
        PINE.crew(),
        PINE.filledIn());
  }

  private static Path scenarios() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      if (Files.isRegularFile(at.resolve("scenarios/park-lime.yaml"))) {
        return at.resolve("scenarios");
      }
    }
    throw new AssertionError("no folder 'scenarios' upward from here");
  }
}
