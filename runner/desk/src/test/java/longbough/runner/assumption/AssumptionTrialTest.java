package longbough.runner.assumption;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.history.YearColumn;
import longbough.model.pruning.Regime;
import longbough.runner.compare.InventedHistories;
import longbough.runner.compare.Metric;
import longbough.runner.compare.Player;
import longbough.shared.quantity.Range;
import longbough.shared.source.Basis;
import longbough.shared.source.ParameterTable;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;

/** With a model so simple that every effect can be told by hand. */
class AssumptionTrialTest {
  private static final int MEMBERS = 8;
  private static final int YEARS = 3;

  private static final List<Sourced> ROWS =
      List.of(
          row("leaf.gain", 1, 0.5, 4, true, Basis.PUBLISHED),
          row("leaf.both", 1, 0, 10, false, Basis.ASSUMPTION),
          row("leaf.turn", 0, 0, 40, false, Basis.MEMORY),
          row("noise.coin", 0, 0, 1, false, Basis.ASSUMPTION),
          row("odd.refused", 1, 0, 1, false, Basis.ASSUMPTION),
          row("fixed.number", 5, 5, 5, false, Basis.PUBLISHED));

  @Test
  void effectIsTheChangeOverTheDistanceOfBestAndWorst() throws InterruptedException {
    Assumptions all = AssumptionTrial.play(input(), new Simple(), 1, done -> {});
    Shift gain = leaf(all, "leaf.gain");
    assertThat(gain.best()).isZero();
    assertThat(gain.scale()).isCloseTo(20, within(1e-9));
    assertThat(gain.base()).isCloseTo(20, within(1e-9));
    assertThat(gain.low()).isCloseTo(10, within(1e-9));
    assertThat(gain.high()).isCloseTo(80, within(1e-9));
    assertThat(gain.change()).isCloseTo(70, within(1e-9));
    assertThat(gain.effect()).isCloseTo(3.5, within(1e-9));
    assertThat(gain.beyondChance()).isTrue();
    assertThat(gain.turns()).isFalse();
  }

  @Test
  void whatMovesBothRegimesAlikeMovesNoVerdict() throws InterruptedException {
    Assumptions all = AssumptionTrial.play(input(), new Simple(), 1, done -> {});
    assertThat(leaf(all, "leaf.both").effect()).isCloseTo(0, within(1e-12));
    assertThat(named(all, "leaf.both").weight()).isZero();
  }

  @Test
  void aTurnOfTheVerdictIsTold() throws InterruptedException {
    Assumptions all = AssumptionTrial.play(input(), new Simple(), 1, done -> {});
    Shift turn = leaf(all, "leaf.turn");
    assertThat(turn.turnsAtLow()).isFalse();
    assertThat(turn.turnsAtHigh()).isTrue();
    assertThat(all.turning())
        .extracting(one -> one.parameter().name())
        .containsExactly("leaf.turn");
  }

  @Test
  void whatChanceExplainsHasNoWeight() throws InterruptedException {
    Assumptions all = AssumptionTrial.play(input(), new Simple(), 1, done -> {});
    Shift coin = leaf(all, "noise.coin");
    assertThat(coin.effect()).isPositive();
    assertThat(coin.beyondChance()).isFalse();
    assertThat(named(all, "noise.coin").weight()).isZero();
  }

  @Test
  void rankedByWeightAndFlaggedWhereNotPublished() throws InterruptedException {
    Assumptions all = AssumptionTrial.play(input(), new Simple(), 1, done -> {});
    assertThat(all.ranked())
        .extracting(one -> one.parameter().name())
        .startsWith("leaf.gain", "leaf.turn")
        .doesNotContain("fixed.number")
        .hasSize(ROWS.size() - 1);
    assertThat(all.flagged())
        .extracting(one -> one.parameter().name())
        .containsExactly("leaf.turn");
    assertThat(all.first(Metric.LEAF_AREA_MEAN_M2, 1))
        .extracting(one -> one.parameter().name())
        .containsExactly("leaf.gain");
    assertThat(all.first(Metric.COST_DISCOUNTED, 1)).isEmpty();
    assertThat(all.groups()).extracting(Assumptions.Group::name).startsWith("leaf");
    assertThat(all.groups().get(0).moving()).isEqualTo(2);
    assertThat(all.groups().get(0).movingUnpublished()).isEqualTo(1);
  }

  @Test
  void aRangeThatCannotBePlayedIsReportedAndTheOthersStand() throws InterruptedException {
    Assumptions all = AssumptionTrial.play(input(), new Simple(), 1, done -> {});
    assertThat(all.failed()).singleElement().matches(one -> one.failure().equals("no such tree"));
    assertThat(all.failed().get(0).weight()).isZero();
  }

  /** A parameter that varies from future to future is held at the end of its range in all. */
  @Test
  void anEndIsHeldInEveryFutureAndTheOthersVaryAsBefore() throws InterruptedException {
    List<ParameterTable> played = java.util.Collections.synchronizedList(new ArrayList<>());
    Simple watched =
        new Simple() {
          @Override
          public List<History[]> playAll(SimulationInput input, int threads, IntConsumer progress) {
            played.add(input.parameters());
            return super.playAll(input, threads, progress);
          }
        };
    AssumptionTrial.play(input(), watched, 1, done -> {});
    assertThat(played).hasSize(AssumptionTrial.runs(input()) - 1);
    assertThat(played.get(0).get("leaf.gain").sampled()).isTrue();
    assertThat(played.get(1).get("leaf.gain").sampled()).isFalse();
    assertThat(played.get(1).value("leaf.gain")).isEqualTo(0.5);
    assertThat(played.get(2).value("leaf.gain")).isEqualTo(4);
    assertThat(played.subList(3, played.size()))
        .allMatch(table -> table.get("leaf.gain").sampled() && table.value("leaf.gain") == 1);
  }

  @Test
  void anyNumberOfThreadsGivesTheSame() throws InterruptedException {
    for (int members : new int[] {MEMBERS, 24}) {
      assertThat(AssumptionTrial.play(input(members), new Simple(), 2, done -> {}).ranked())
          .isEqualTo(AssumptionTrial.play(input(members), new Simple(), 1, done -> {}).ranked());
    }
  }

  /** What can be told after a few futures is played no further; what moves the verdict is. */
  @Test
  void aParameterIsLeftWhereMoreFuturesCouldShowNothing() throws InterruptedException {
    Assumptions all = AssumptionTrial.play(input(24), new Simple(), 1, done -> {});
    assertThat(named(all, "leaf.both").futures()).isEqualTo(8);
    assertThat(named(all, "leaf.gain").futures()).isEqualTo(24);
    assertThat(named(all, "leaf.turn").futures()).isEqualTo(24);
    assertThat(named(all, "noise.coin").futures()).isEqualTo(16);
    assertThat(all.playedThrough()).isEqualTo(2);
    assertThat(named(all, "noise.coin").weight()).isZero();
    assertThat(leaf(all, "leaf.gain").effect()).isCloseTo(3.5, within(1e-9));
  }

  /** Pauses change nothing of what is played to the end: every future is met once, in order. */
  @Test
  void pausesLeaveNoFutureOutAndPlayNoneTwice() throws InterruptedException {
    List<Integer> played = new ArrayList<>();
    Simple watched =
        new Simple() {
          @Override
          public List<History[]> playSome(SimulationInput input, int from, int to)
              throws InterruptedException {
            if (input.parameters().value("leaf.gain") == 4) {
              for (int member = from; member < to; member++) {
                played.add(member);
              }
            }
            return super.playSome(input, from, to);
          }
        };
    AssumptionTrial.play(input(24), watched, 1, done -> {});
    assertThat(played).containsExactlyElementsOf(IntStream.range(0, 24).boxed().toList());
  }

  @Test
  void fewFuturesAreNotPausedOver() {
    assertThat(Look.of(11)).isEmpty();
    assertThat(Look.of(17)).extracting(Look::futures).containsExactly(6, 11);
    assertThat(Look.of(24)).extracting(Look::futures).containsExactly(8, 16);
    assertThat(Look.of(100)).extracting(Look::futures).containsExactly(33, 67);
  }

  private static Assumption named(Assumptions all, String name) {
    return all.ranked().stream()
        .filter(one -> one.parameter().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Shift leaf(Assumptions all, String name) {
    return named(all, name).shifts().stream()
        .filter(shift -> shift.metric() == Metric.LEAF_AREA_MEAN_M2)
        .findFirst()
        .orElseThrow();
  }

  private static SimulationInput input() {
    return input(MEMBERS);
  }

  private static SimulationInput input(int members) {
    List<Regime> two = InventedHistories.regimes(YEARS).subList(0, 2);
    return InventedHistories.input(two, members, YEARS).with(ParameterTable.of(ROWS));
  }

  private static Sourced row(
      String name, double value, double low, double high, boolean sampled, Basis basis) {
    return new Sourced(name, value, "1", new Range(low, high), sampled, basis, "", "for a test");
  }

  /** Leaf of the first regime: 100 + 20 gain + both; of the second: 100 + turn + both. */
  private static class Simple implements Player {
    @Override
    public List<History[]> playAll(SimulationInput input, int threads, IntConsumer progress) {
      ParameterTable p = input.parameters();
      if (p.value("odd.refused") < 1) {
        throw new IllegalArgumentException("no such tree");
      }
      List<History[]> all = new ArrayList<>();
      for (int regime = 0; regime < 2; regime++) {
        History[] members = new History[input.members()];
        for (int member = 0; member < members.length; member++) {
          double own = regime == 0 ? 20 * p.value("leaf.gain") : p.value("leaf.turn");
          double coin = regime == 0 && member == 0 ? 16 * p.value("noise.coin") : 0;
          members[member] =
              history(input.years(), 100 + member + own + coin + p.value("leaf.both"));
        }
        all.add(members);
      }
      return all;
    }

    @Override
    public History playInDetail(
        SimulationInput input, Regime regime, int member, Set<Integer> snapshotYears) {
      throw new AssertionError("a trial needs no events");
    }

    private static History history(int years, double leafAreaM2) {
      History history = new History(years);
      for (int year = 0; year <= years; year++) {
        history.set(YearColumn.ALIVE, year, 1);
        history.set(YearColumn.LEAF_AREA_M2, year, leafAreaM2);
      }
      return history;
    }
  }
}
