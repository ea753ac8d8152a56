package longbough.runner.fit.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Functions whose lowest point is known. */
class StepSearchTest {
  private final List<double[]> asked = new ArrayList<>();

  @Test
  void findsTheLowestPointOfABowl() throws InterruptedException {
    Optimum found = search(x -> square(x[0] - 0.3) + 2 * square(x[1] - 0.8), 200, 0.5, 0.5);
    assertThat(found.point()[0]).isCloseTo(0.3, within(0.01));
    assertThat(found.point()[1]).isCloseTo(0.8, within(0.01));
    assertThat(found.settled()).isTrue();
    assertThat(found.tried()).isEqualTo(asked.size()).isLessThan(80);
  }

  @Test
  void followsASlantingValley() throws InterruptedException {
    Optimum found =
        search(x -> 20 * square(x[0] - x[1]) + square(x[0] + x[1] - 1.4), 400, 0.1, 0.2);
    assertThat(found.point()[0]).isCloseTo(0.7, within(0.05));
    assertThat(found.point()[1]).isCloseTo(0.7, within(0.05));
  }

  @Test
  void staysInTheBox() throws InterruptedException {
    Optimum found = search(x -> x[0] - x[1], 200, 0.5, 0.5);
    assertThat(found.point()).containsExactly(0, 1);
    assertThat(asked).allSatisfy(p -> assertThat(Arrays.stream(p)).allMatch(x -> x >= 0 && x <= 1));
  }

  @Test
  void isNotLedAstrayBySteps() throws InterruptedException {
    Optimum found =
        search(x -> Math.floor(20 * Math.abs(x[0] - 0.62)) + Math.abs(x[0] - 0.62), 200, 0.05);
    assertThat(found.point()[0]).isCloseTo(0.62, within(0.03));
  }

  @Test
  void triesNoMoreThanItsBudget() throws InterruptedException {
    for (int budget = 1; budget < 20; budget++) {
      asked.clear();
      Optimum found = search(x -> square(x[0] - 0.3) + square(x[1] - 0.8), budget, 0.5, 0.5);
      assertThat(asked).hasSizeLessThanOrEqualTo(budget);
      assertThat(found.settled()).isFalse();
      assertThat(found.value()).isLessThanOrEqualTo(square(0.2) + square(0.3) + 1e-9);
    }
  }

  private Optimum search(ToDoubleFunction<double[]> function, int budget, double... start)
      throws InterruptedException {
    return StepSearch.lowest(
        points -> {
          asked.addAll(points);
          return points.stream().mapToDouble(function).toArray();
        },
        start,
        budget);
  }

  private static double square(double x) {
    return x * x;
  }
}
