package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.pruning.Placement;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What must hold for every history of wounds, whatever the numbers. */
class DecayProperties {
  record RandomWound(
      int year,
      Placement placement,
      double diameterM,
      double heightM,
      double azimuthRad,
      boolean heartwood,
      boolean acrossStem) {}

  record RandomHistory(
      String species, List<RandomWound> wounds, double reserve, double ringM, double sapwood) {}

  @Provide
  Arbitrary<RandomHistory> histories() {
    Arbitrary<RandomWound> wound =
        Combinators.combine(
                Arbitraries.integers().between(0, 25),
                Arbitraries.of(Placement.class),
                Arbitraries.doubles().between(0.005, 0.35).ofScale(3),
                Arbitraries.doubles().between(0, 12),
                Arbitraries.doubles().between(0, 6.28),
                Arbitraries.of(true, false),
                Arbitraries.frequency(
                    net.jqwik.api.Tuple.of(1, true), net.jqwik.api.Tuple.of(5, false)))
            .as(RandomWound::new);
    return Combinators.combine(
            Arbitraries.of(TestTrunks.WEAK, TestTrunks.STRONG, TestTrunks.SPRUCE, "quercus-robur"),
            wound.list().ofMaxSize(12),
            Arbitraries.doubles().between(0, 1),
            Arbitraries.doubles().between(0, 0.012).ofScale(4),
            Arbitraries.doubles().between(0.05, 1))
        .as(RandomHistory::new);
  }

  // Wound checks D01, D02: Shigo A.L. 1983, USDA Forest Service GTR NE-82; Shigo A.L., Larson E.vH.
  // 1969,
  // Res. Pap. NE-127: no column is wider than the stem was when the wound was made.
  @Property(tries = 150, seed = "20260101")
  void decayNeverPassesTheBarrierZone(@ForAll("histories") RandomHistory history) {
    play(
        history,
        (state, year) -> {
          Wounds wounds = state.wounds;
          double widest = 0;
          for (int w = 0; w < wounds.count; w++) {
            assertThat(wounds.columnDepthM[w]).isBetween(0.0, wounds.parentRadiusM[w]);
            assertThat(wounds.columnHalfWidthM[w])
                .isBetween(0.0, Math.PI * wounds.parentRadiusM[w] * (1 + 1e-12));
            widest = Math.max(widest, wounds.parentRadiusM[w]);
          }
          for (int i = 0; i < state.trunk.stations * Sections.SECTORS; i++) {
            double inner = state.sections.holes.innermostM(i);
            double outer = state.sections.holes.outermostM(i);
            assertThat(inner).isBetween(0.0, outer);
            assertThat(outer)
                .isLessThanOrEqualTo(
                    Math.min(widest, state.trunk.radiusM[i / Sections.SECTORS]) + 1e-12);
          }
        });
  }

  @Property(tries = 150, seed = "20260101")
  void closureNeverReopensAndColumnsNeverShrink(@ForAll("histories") RandomHistory history) {
    double[] width = new double[64];
    double[] up = new double[64];
    double[] down = new double[64];
    double[] depth = new double[64];
    boolean[] closed = new boolean[64];
    java.util.Arrays.fill(width, Double.MAX_VALUE);
    play(
        history,
        (state, year) -> {
          Wounds wounds = state.wounds;
          for (int w = 0; w < wounds.count; w++) {
            assertThat(wounds.openWidthM[w]).isBetween(0.0, width[w]);
            assertThat(wounds.columnUpM[w]).isGreaterThanOrEqualTo(up[w]);
            assertThat(wounds.columnDownM[w]).isGreaterThanOrEqualTo(down[w]);
            assertThat(wounds.columnDepthM[w]).isGreaterThanOrEqualTo(depth[w]);
            assertThat(closed[w] && wounds.open(w)).isFalse();
            width[w] = wounds.openWidthM[w];
            up[w] = wounds.columnUpM[w];
            down[w] = wounds.columnDownM[w];
            depth[w] = wounds.columnDepthM[w];
            closed[w] = !wounds.open(w);
          }
        });
  }

  @Property(tries = 150, seed = "20260101")
  void sharesStayBetweenNoneAndAll(@ForAll("histories") RandomHistory history) {
    play(
        history,
        (state, year) -> {
          for (int s = 0; s < Trunk.MAX_STATIONS; s++) {
            assertThat(state.sections.areaFraction[s]).isBetween(0.0, 1.0);
            assertThat(state.sections.strengthLoss[s]).isBetween(0.0, 1.0);
            assertThat(state.sections.wallRatio[s]).isBetween(0.0, 1.0);
          }
          assertThat(state.vitality.failureProbability).isBetween(0.0, 1.0);
          assertThat(state.vitality.failureProbability)
              .isGreaterThanOrEqualTo(
                  Math.max(
                          state.vitality.stemFailureProbability,
                          Math.max(
                              state.vitality.limbFailureProbability,
                              state.vitality.uprootingProbability))
                      - 1e-12);
        });
  }

  // Old columns are drawn in turn: the picture lags behind a fresh one by two years at most.
  @Property(tries = 100, seed = "20260101")
  void drawingInTurnLagsByTwoYearsAtMost(@ForAll("histories") RandomHistory history) {
    double[] twoYearsAgo = new double[Trunk.MAX_STATIONS];
    play(
        history,
        (state, year) -> {
          if (year == 27) {
            TreeState drawn = drawnAnew(state, history.species());
            for (int s = 0; s < state.trunk.stations; s++) {
              twoYearsAgo[s] = decayedM2(drawn, s);
            }
          } else if (year == 29) {
            TreeState drawn = drawnAnew(state, history.species());
            for (int s = 0; s < state.trunk.stations; s++) {
              assertThat(decayedM2(state, s))
                  .isBetween(twoYearsAgo[s] - 1e-6, decayedM2(drawn, s) + 1e-6);
            }
          }
        });
  }

  private static TreeState drawnAnew(TreeState state, String species) {
    YearContext fresh = TestTrunks.of(species);
    fresh.state.copyFrom(state);
    for (int s = 0; s < Trunk.MAX_STATIONS; s++) {
      fresh.state.sections.clear(s);
    }
    fresh.state.year = 1;
    new TrunkSections().run(fresh);
    new TrunkStrength().run(fresh);
    return fresh.state;
  }

  private static double decayedM2(TreeState state, int station) {
    double radius = state.trunk.radiusM[station];
    return state.sections.areaFraction[station] * Math.PI * radius * radius;
  }

  private interface Check {
    void after(TreeState state, int year);
  }

  private static void play(RandomHistory history, Check check) {
    YearContext context = TestTrunks.of(history.species());
    TestTrunks.limbs(context.state);
    TestTrunks.reserve(context.state, history.reserve());
    context.state.trunk.sapwoodShare = history.sapwood();
    for (int year = 0; year < 30; year++) {
      for (RandomWound wound : history.wounds()) {
        if (wound.year() == year) {
          add(context, wound);
        }
      }
      TestTrunks.years(context, 1, history.ringM());
      TestTrunks.wind(context);
      check.after(context.state, year);
    }
  }

  private static void add(YearContext context, RandomWound wound) {
    int w = TestTrunks.cut(context, wound.placement(), wound.diameterM());
    Wounds wounds = context.state.wounds;
    wounds.heightM[w] = wound.heightM();
    wounds.azimuthRad[w] = wound.azimuthRad();
    wounds.heartwood[w] = wound.heartwood();
    wounds.acrossStem[w] = wound.acrossStem();
    wounds.parentRadiusM[w] = context.state.trunk.radiusAtM(wound.heightM());
  }
}
