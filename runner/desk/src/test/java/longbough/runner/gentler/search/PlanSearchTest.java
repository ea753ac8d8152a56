package longbough.runner.gentler.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import longbough.model.Simulation;
import longbough.model.SimulationInput;
import longbough.runner.gentler.Advice;
import longbough.runner.gentler.Futures;
import longbough.runner.gentler.Outcome;
import longbough.runner.gentler.Plan;
import longbough.runner.wish.Wish;
import longbough.runner.wish.Wishes;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/**
 * What the search must do, on few futures; the full measure against chance is {@link
 * SearchAgainstChance}.
 */
class PlanSearchTest {
  private static final int FUTURES = 2;
  private static final int RANDOM = 300;
  private static final InventedCase CASE = InventedCase.all().get(6);

  @Test
  void beatsOrTiesPlansDrawnByChance() throws InterruptedException {
    SimulationInput input = CASE.input(FUTURES);
    try (Futures futures = new Futures(input, CASE.wishes(), 2)) {
      Design design =
          new Design(CASE.wishes(), futures.yardsticks(), new Simulation(input).startingTree());
      Trials searched = new Trials(futures, design);
      PlanSearch.run(searched, design, 1, done -> {});
      Trials drawn = new Trials(futures, design);
      Well19937c chance = new Well19937c(1);
      for (int i = 0; i < RANDOM; i++) {
        drawn.of(DoubleStream.generate(chance::nextDouble).limit(design.numbers()).toArray());
      }
      assertThat(least(searched)).isLessThanOrEqualTo(least(drawn) + 1e-9);
    }
  }

  @Test
  void givesTheSameAdviceOnAnyNumberOfThreadsAndNoPlanShownIsBeaten() throws InterruptedException {
    SimulationInput input = CASE.input(3);
    Advice one = Adviser.advise(input, CASE.wishes(), 1, done -> {});
    Advice two = Adviser.advise(input, CASE.wishes(), 2, done -> {});
    assertThat(two.all()).isEqualTo(one.all());
    assertThat(one.tried()).isGreaterThan(100);
    List<Plan> plans = one.plans();
    for (Plan plan : plans) {
      assertThat(plans).noneMatch(other -> Front.beats(other.outcome(), plan.outcome()));
    }
  }

  @Test
  void aWishBeyondReachIsNotCalledGiven() throws InterruptedException {
    Wishes beyond = new Wishes("", 2, 4, List.of(new Wish.HeightLimit(2)));
    Advice advice = Adviser.advise(CASE.input(FUTURES), beyond, 2, done -> {});
    assertThat(advice.given() && advice.givenGently()).isFalse();
  }

  private static double least(Trials trials) {
    return trials.all().values().stream()
        .min(Comparator.comparingDouble(Weighting.USUAL::of))
        .map((Outcome outcome) -> Weighting.USUAL.of(outcome))
        .orElseThrow();
  }
}
