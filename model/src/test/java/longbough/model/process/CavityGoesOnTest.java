package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.MeasuredTree.KnownCavity;
import longbough.model.tree.TreeReconstruction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A cavity that was measured at the start is there in year 0 and goes on from there. */
class CavityGoesOnTest {
  private static final double WALL_M = 0.08;
  private static final double LENGTH_M = 1.2;
  private static final int STATION = 3;
  private static final double RING_M = 0.003;

  /** The measured wall comes out as measured, and only grows by new wood: the barrier holds. */
  @ParameterizedTest
  @ValueSource(strings = {TestTrunks.WEAK, TestTrunks.STRONG, "quercus-robur"})
  void aClosedCavityKeepsItsBarrierWhileItRunsOnAlongTheTrunk(String species) {
    YearContext context = hollow(species, 0);
    Sections sections = context.state.sections;
    double radius = context.state.trunk.radiusAtM(STATION * 0.5);
    TestTrunks.years(context, 1, 0);
    double hollow = 1 - WALL_M / radius;
    assertThat(sections.wallRatio[STATION]).isEqualTo(WALL_M / radius, within(1e-9));
    assertThat(sections.areaFraction[STATION]).isEqualTo(hollow * hollow, within(1e-9));
    assertThat(sections.strengthLoss[STATION]).isEqualTo(Math.pow(hollow, 4), within(1e-6));
    double up = context.state.wounds.columnUpM[0];
    double bound = context.state.wounds.columnDepthM[0];
    TestTrunks.years(context, 20, RING_M);
    double grown = 20 * RING_M;
    assertThat(context.state.wounds.columnUpM[0]).isGreaterThan(up + 0.01);
    assertThat(context.state.wounds.columnDepthM[0]).isEqualTo(bound);
    assertThat(sections.wallRatio[STATION])
        .isEqualTo((WALL_M + grown) / (radius + grown), within(1e-9));
    assertThat(sections.strengthLoss[STATION]).isLessThan(Math.pow(hollow, 4));
  }

  /** Open to the air it costs more strength from the first year on, and runs on faster. */
  @ParameterizedTest
  @ValueSource(strings = {TestTrunks.WEAK, TestTrunks.STRONG})
  void anOpenCavityCostsMoreAndRunsFaster(String species) {
    YearContext closed = hollow(species, 0);
    YearContext open = hollow(species, 0.12);
    TestTrunks.years(closed, 1, 0);
    TestTrunks.years(open, 1, 0);
    assertThat(open.state.sections.holes.open[STATION * Sections.SECTORS + sector()]).isTrue();
    assertThat(open.state.sections.wallRatio[STATION]).isZero();
    TestTrunks.years(closed, 10, RING_M);
    TestTrunks.years(open, 10, RING_M);
    double closedRun = closed.state.wounds.columnUpM[0] - LENGTH_M / 2;
    double openRun = open.state.wounds.columnUpM[0] - LENGTH_M / 2;
    assertThat(openRun).isGreaterThan(2 * closedRun);
    assertThat(open.state.wounds.columnDepthM[0])
        .isLessThanOrEqualTo(open.state.wounds.parentRadiusM[0]);
  }

  private static int sector() {
    return longbough.model.geometry.SectorGrid.STANDARD.nearest(Math.PI / 2);
  }

  private static YearContext hollow(String species, double openWidthM) {
    ModelParameters p = PlayedTrees.parameters(species);
    MeasuredTree bare = PlayedTrees.tree(p.species(), 0.5, 0.9);
    KnownCavity cavity = new KnownCavity(STATION * 0.5, LENGTH_M, WALL_M, 90, openWidthM);
    MeasuredTree tree =
        new MeasuredTree(
            bare.dbhM(),
            bare.heightM(),
            bare.crownBaseM(),
            bare.spreadM(),
            bare.condition(),
            List.of(cavity),
            List.of(),
            0,
            List.of());
    TreeState state = TreeReconstruction.build(tree, p, 0.9);
    YearContext context =
        new YearContext(state, new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = p;
    context.month = 12;
    return context;
  }
}
