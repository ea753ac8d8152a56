package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.pruning.Placement;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wounds whose years are not all alike: hunger, several columns in one trunk, a topped stem. */
class WoundHistoryTest {
  private static final double RING_M = 0.003;
  private static final int STATION = 4;

  /** No ring, no woundwood: an open face waits, its decay does not, and it goes on later. */
  @ParameterizedTest
  @EnumSource(Placement.class)
  void closingStopsWhileTheTreeStarvesAndGoesOnAfterwards(Placement placement) {
    YearContext context = TestTrunks.of(TestTrunks.WEAK);
    int w = TestTrunks.cut(context, placement, 0.1);
    Wounds wounds = context.state.wounds;
    TestTrunks.years(context, 3, RING_M);
    double width = wounds.openWidthM[w];
    double height = wounds.openHeightM[w];
    double column = wounds.columnDownM[w];
    TestTrunks.reserve(context.state, 0);
    TestTrunks.years(context, 5, 0);
    assertThat(wounds.openWidthM[w]).isEqualTo(width);
    assertThat(wounds.openHeightM[w]).isEqualTo(height);
    assertThat(wounds.columnDownM[w]).isGreaterThan(column);
    TestTrunks.reserve(context.state, 0.7);
    TestTrunks.years(context, 12, RING_M);
    assertThat(wounds.openWidthM[w]).isLessThan(width);
  }

  /** The years of hunger are lost: the twin that never starved closes that much earlier. */
  @Test
  void hungerPutsClosingOffByItsOwnYearsAtLeast() {
    YearContext fed = TestTrunks.of(TestTrunks.STRONG);
    YearContext starved = TestTrunks.of(TestTrunks.STRONG);
    TestTrunks.cut(fed, Placement.COLLAR, 0.1);
    TestTrunks.cut(starved, Placement.COLLAR, 0.1);
    TestTrunks.years(fed, 2, RING_M);
    TestTrunks.years(starved, 2, RING_M);
    TestTrunks.years(starved, 4, 0);
    assertThat(yearsToClose(starved)).isGreaterThanOrEqualTo(yearsToClose(fed));
    assertThat(starved.state.wounds.closedYear[0])
        .isGreaterThanOrEqualTo(fed.state.wounds.closedYear[0] + 4);
  }

  private static int yearsToClose(YearContext context) {
    int years = 0;
    while (context.state.wounds.open(0) && years < 100) {
      TestTrunks.years(context, 1, RING_M);
      years++;
    }
    return years;
  }

  /** Columns on opposite sides add up; one behind the other they are one. */
  @Test
  void columnsFarApartAddUpAndColumnsThatMeetMerge() {
    double alone = area(1.0);
    assertThat(alone).isPositive();
    // Old columns are drawn in turn, in different years.
    assertThat(area(1.0, 1.0)).isEqualTo(alone, within(0.01 * alone));
    double opposite = area(1.0, 1.0 + Math.PI);
    assertThat(opposite).isEqualTo(2 * alone, within(0.02 * alone));
    double near = area(1.0, 1.2);
    assertThat(near).isBetween(1.01 * alone, 1.99 * alone);
  }

  /** Three columns on one side cost more strength than the same three spread round the stem. */
  @Test
  void columnsOnOneSideAreWorseThanTheSameSpreadRound() {
    TreeState oneSide = with(1.0, 1.6, 2.2);
    TreeState spread = with(1.0, 1.0 + 2 * Math.PI / 3, 1.0 + 4 * Math.PI / 3);
    assertThat(oneSide.sections.areaFraction[STATION])
        .isLessThanOrEqualTo(1.02 * spread.sections.areaFraction[STATION]);
    assertThat(oneSide.sections.strengthLoss[STATION])
        .isGreaterThan(1.1 * spread.sections.strengthLoss[STATION]);
  }

  /** Wood that grew between an old column and a younger one outside it is sound. */
  @Test
  void woodBetweenAnOldAndAYoungColumnIsSound() {
    TreeState both = nested(true);
    TreeState old = nested(false);
    Sections sections = both.sections;
    int sector = STATION * Sections.SECTORS + middleSector();
    assertThat(sections.holes.spans[sector]).isEqualTo((byte) 2);
    double gap = sections.holes.innerM[sector * 3 + 1] - sections.holes.outerM[sector * 3];
    assertThat(gap).isGreaterThan(0.03);
    assertThat(sections.strengthLoss[STATION]).isGreaterThan(old.sections.strengthLoss[STATION]);
  }

  private static int middleSector() {
    return longbough.model.geometry.SectorGrid.STANDARD.nearest(1);
  }

  private static TreeState nested(boolean young) {
    YearContext context = TestTrunks.of(TestTrunks.STRONG);
    context.state.trunk.sapwoodShare = 1;
    TestTrunks.barkWound(context, 0.05);
    TestTrunks.years(context, 20, 0.004);
    if (young) {
      TestTrunks.barkWound(context, 0.05);
    }
    TestTrunks.years(context, 9, 0.004);
    return context.state;
  }

  private static double area(double... bearings) {
    return with(bearings).sections.areaFraction[STATION];
  }

  private static TreeState with(double... bearings) {
    YearContext context = TestTrunks.of(TestTrunks.WEAK);
    context.state.trunk.sapwoodShare = 1;
    for (double bearing : bearings) {
      int w = TestTrunks.barkWound(context, 0.06);
      context.state.wounds.azimuthRad[w] = bearing;
    }
    TestTrunks.years(context, 9, 0.001);
    // Closed faces leave the columns alone, without openings.
    return context.state;
  }

  /** A topping cut rots downwards from the whole section, faster in the weak, and hardly closes. */
  @ParameterizedTest
  @ValueSource(strings = {TestTrunks.WEAK, TestTrunks.STRONG})
  void aToppingCutDecaysDownwardsAndStaysOpen(String species) {
    YearContext context = topped(species);
    Wounds wounds = context.state.wounds;
    Sections sections = context.state.sections;
    TestTrunks.years(context, 15, RING_M);
    int top = context.state.trunk.stations - 1;
    assertThat(wounds.columnUpM[0]).isZero();
    assertThat(wounds.columnDownM[0]).isGreaterThan(0.5);
    assertThat(wounds.open(0)).isTrue();
    assertThat(wounds.columnDepthM[0]).isLessThanOrEqualTo(wounds.parentRadiusM[0]);
    assertThat(sections.areaFraction[top]).isGreaterThan(sections.areaFraction[top - 1]);
    assertThat(sections.areaFraction[0]).isZero();
    for (int k = 0; k < Sections.SECTORS; k++) {
      assertThat(sections.holes.innermostM(top * Sections.SECTORS + k)).isZero();
    }
  }

  @Test
  void aToppingCutReachesFurtherInAWeakSpecies() {
    YearContext weak = topped(TestTrunks.WEAK);
    YearContext strong = topped(TestTrunks.STRONG);
    TestTrunks.years(weak, 15, RING_M);
    TestTrunks.years(strong, 15, RING_M);
    assertThat(weak.state.wounds.columnDownM[0])
        .isGreaterThan(1.2 * strong.state.wounds.columnDownM[0]);
  }

  private static YearContext topped(String species) {
    YearContext context = TestTrunks.of(species);
    Trunk trunk = context.state.trunk;
    trunk.stations = 17;
    trunk.heightM = 8;
    trunk.leaderIntact = false;
    double radius = trunk.radiusAtM(8);
    int w = TestTrunks.cut(context, Placement.STUB, 2 * radius);
    Wounds wounds = context.state.wounds;
    wounds.heightM[w] = 8;
    wounds.acrossStem[w] = true;
    wounds.heartwood[w] = true;
    wounds.stubM[w] = 0;
    wounds.parentRadiusM[w] = radius;
    wounds.faceWidthM[w] = 2 * radius;
    wounds.faceHeightM[w] = 2 * radius;
    wounds.openWidthM[w] = 2 * radius;
    wounds.openHeightM[w] = 2 * radius;
    return context;
  }
}
