package longbough.runner.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longbough.runner.validate.Standing;
import org.junit.jupiter.api.Test;

/** Fits to invented checks of which the true parameters are known. */
class FitTest {

  @Test
  void findsTheTrueValues() throws InterruptedException {
    FitResult result = new ToyTrees().fit(2);
    Map<String, Fitted> fitted =
        result.fitted().stream().collect(Collectors.toMap(f -> f.parameter().name(), f -> f));
    assertThat(fitted).containsOnlyKeys("toy.a", "toy.b");
    assertThat(fitted.get("toy.a").after()).isCloseTo(ToyTrees.TRUE_A, within(0.02));
    assertThat(fitted.get("toy.b").after()).isCloseTo(ToyTrees.TRUE_B, within(0.3));
    assertThat(fitted.get("toy.a").checks()).contains("T1", "T2").doesNotContain("T3", "T4", "K1");
    assertThat(fitted.get("toy.b").checks()).contains("T2", "T3").doesNotContain("T1", "K1");
    assertThat(result.settled()).isTrue();
    assertThat(result.surprises()).isEmpty();
  }

  @Test
  void theChecksKeptApartTellAfterwards() throws InterruptedException {
    FitResult result = new ToyTrees().fit(2);
    assertThat(Standing.of(result.before().get("K1"))).isEqualTo(Standing.MISS);
    assertThat(Standing.of(result.after().get("K1"))).isEqualTo(Standing.PASS);
    Score before = Score.of(result.before(), result.plan().training());
    Score after = Score.of(result.after(), result.plan().training());
    assertThat(before.count(Standing.PASS)).isZero();
    assertThat(after.count(Standing.PASS)).isEqualTo(3);
    assertThat(after.count(Standing.MISS)).as("what no parameter moves").isEqualTo(1);
    assertThat(after.loss()).isLessThan(before.loss());
  }

  @Test
  void theThreadsChangeNothing() throws InterruptedException {
    FitResult one = new ToyTrees().fit(1);
    FitResult four = new ToyTrees().fit(4);
    assertThat(four.fitted()).isEqualTo(one.fitted());
    assertThat(four.influences()).isEqualTo(one.influences());
    assertThat(four.after()).isEqualTo(one.after());
    assertThat(four.tried()).isEqualTo(one.tried());
  }

  @Test
  void screensTheStrongestFirst() throws InterruptedException {
    FitResult result = new ToyTrees().screen();
    List<Influence> influences = result.influences();
    assertThat(influences).extracting(i -> i.parameter().name()).last().isEqualTo("toy.c");
    assertThat(influences.get(2).stir()).isZero();
    assertThat(influences.get(0).stir()).isGreaterThan(influences.get(1).stir());
    assertThat(result.fitted()).isEmpty();
  }

  @Test
  void anExperimentThatBreaksIsTheWorstResultAndNotTheEnd() throws InterruptedException {
    FitResult result = new ToyTrees().withOneThatBreaks().fit(2);
    Influence a =
        result.influences().stream()
            .filter(i -> i.parameter().name().equals("toy.a"))
            .findFirst()
            .orElseThrow();
    assertThat(a.changes().get("T5")).isGreaterThan(5);
    assertThat(Standing.of(result.after().get("T5"))).isEqualTo(Standing.PASS);
  }

  @Test
  void valuesAreRoundedToWhatAFitCanTell() {
    FreeParameter a = new FreeParameter(ToyTrees.row("toy.a", 0.3, 0.1, 0.9), "");
    assertThat(a.value(0.512345)).isEqualTo(0.51);
    assertThat(a.value(1)).isEqualTo(0.9);
    assertThat(a.value(0)).isEqualTo(0.1);
    FreeParameter large = new FreeParameter(ToyTrees.row("toy.l", 800, 450, 1600), "");
    assertThat(large.value(0.123456)).isEqualTo(592);
  }
}
