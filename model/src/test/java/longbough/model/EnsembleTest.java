package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Regime;
import org.junit.jupiter.api.Test;

class EnsembleTest {
  private static final List<Regime> REGIMES =
      List.of(Regimes.NONE, Regimes.HARSH, Regimes.random(3));
  private static final SimulationInput INPUT =
      PlayedTrees.input("quercus-robur", 0.3, 0.7, PlayedTrees.MARITIME, REGIMES, 10, 8);

  private static List<History[]> play(SimulationInput input, int workers, AtomicInteger done)
      throws InterruptedException {
    ExecutorService executor = Executors.newFixedThreadPool(workers);
    try {
      return new Ensemble(input).run(executor, workers, count -> done.incrementAndGet());
    } finally {
      executor.shutdown();
    }
  }

  @Test
  void anyNumberOfThreadsGivesTheSameBits() throws InterruptedException {
    AtomicInteger done = new AtomicInteger();
    List<History[]> one = play(INPUT, 1, done);
    assertThat(done).hasValue(24);
    for (int workers : new int[] {2, 5}) {
      List<History[]> many = play(INPUT, workers, done);
      for (int regime = 0; regime < REGIMES.size(); regime++) {
        for (int member = 0; member < INPUT.members(); member++) {
          Histories.assertSame(one.get(regime)[member], many.get(regime)[member]);
        }
      }
    }
  }

  @Test
  void laterFuturesAreTheSameWithoutTheEarlierOnes() throws InterruptedException {
    ExecutorService executor = Executors.newFixedThreadPool(2);
    try {
      List<History[]> all = play(INPUT, 1, new AtomicInteger());
      List<History[]> later = new Ensemble(INPUT, 5).run(executor, 2, count -> {});
      for (int regime = 0; regime < REGIMES.size(); regime++) {
        assertThat(later.get(regime)).hasSize(INPUT.members() - 5);
        for (int member = 5; member < INPUT.members(); member++) {
          Histories.assertSame(all.get(regime)[member], later.get(regime)[member - 5]);
        }
      }
    } finally {
      executor.shutdown();
    }
  }

  @Test
  void futuresDifferAndRegimesShareThem() throws InterruptedException {
    List<History[]> all = play(INPUT, 1, new AtomicInteger());
    History[] none = all.get(0);
    assertThat(none[0].value(YearColumn.GPP_KG_C, 1))
        .isNotEqualTo(none[1].value(YearColumn.GPP_KG_C, 1));
    for (int member = 0; member < INPUT.members(); member++) {
      assertThat(all.get(1)[member].value(YearColumn.GPP_KG_C, 1))
          .as("before the first cut a regime changes nothing")
          .isEqualTo(none[member].value(YearColumn.GPP_KG_C, 1));
    }
  }

  @Test
  void anotherRegimeChangesNobodyElsesFutures() throws InterruptedException {
    SimulationInput alone =
        PlayedTrees.input(
            "quercus-robur", 0.3, 0.7, PlayedTrees.MARITIME, List.of(Regimes.HARSH), 10, 8);
    List<History[]> all = play(INPUT, 2, new AtomicInteger());
    History[] single = play(alone, 1, new AtomicInteger()).get(0);
    for (int member = 0; member < INPUT.members(); member++) {
      Histories.assertSame(all.get(1)[member], single[member]);
    }
  }

  @Test
  void whatTheListenerThrowsEndsTheRun() {
    ExecutorService executor = Executors.newFixedThreadPool(2);
    try {
      assertThatThrownBy(
              () ->
                  new Ensemble(INPUT)
                      .run(
                          executor,
                          2,
                          count -> {
                            throw new IllegalStateException("stop");
                          }))
          .hasMessage("stop");
    } finally {
      executor.shutdown();
    }
  }
}
