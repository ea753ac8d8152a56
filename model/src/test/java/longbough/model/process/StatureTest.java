package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.geometry.Allometry;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.TreeReconstruction;
import org.junit.jupiter.api.Test;

/** What the shoots keep pace with. */
class StatureTest {
  private static final double HABIT_SHARE = 0.4;
  private static final int YEARS = 100;
  private final ModelParameters p = PlayedTrees.parameters("tilia-cordata");

  /** Rings narrow with the leaves: each leaf makes as much wood as before, so shoots hold on. */
  @Test
  void keepsItsPaceWhereOnlyLeavesAreGone() {
    YearContext context = grown(HABIT_SHARE, HABIT_SHARE);
    double pace = context.state.trunk.shootPaceM;
    new Stature().run(context);
    assertThat(context.state.trunk.shootPaceM).isCloseTo(pace, within(1e-9));
    assertThat(context.state.trunk.shootLeadM)
        .isCloseTo(2 * pace * (1 - HABIT_SHARE), within(1e-9));
  }

  /** As narrow a ring of a full crown, in drought or shade, slows the shoots and leaves no lead. */
  @Test
  void slowsWhereLeavesEarnLess() {
    YearContext context = grown(1, HABIT_SHARE);
    double pace = context.state.trunk.shootPaceM;
    new Stature().run(context);
    assertThat(context.state.trunk.shootPaceM)
        .isCloseTo(
            pace - pace * (1 - HABIT_SHARE) / p.allocation().ringMemoryYears(), within(1e-9));
    assertThat(context.state.trunk.shootLeadM).isCloseTo(0, within(1e-12));
  }

  /** A stem as slender as those of the forest can't outgrow its thickness further. */
  @Test
  void endsWhereTheStemIsAsSlenderAsCanBe() {
    YearContext context = grown(HABIT_SHARE, HABIT_SHARE);
    context.state.frame.heightFactor = p.allocation().slenderestHeight();
    context.state.frame.leaderFactor = 2;
    new Stature().run(context);
    assertThat(context.state.trunk.shootLeadM).isZero();
    assertThat(context.state.trunk.leaderLeadM).isZero();
  }

  /** The leader grows twice as fast as the shoots below it: it gains a pace a year on them. */
  @Test
  void aLeaderInTheLightGetsAheadOfTheOtherShoots() {
    YearContext context = grown(1, 1);
    context.state.frame.leaderFactor = 2;
    new Stature().run(context);
    Trunk trunk = context.state.trunk;
    assertThat(trunk.leaderLeadM).isCloseTo(2 * trunk.shootPaceM, within(1e-12));
    assertThat(trunk.leaderStatureM() - trunk.statureM())
        .isCloseTo(trunk.leaderLeadM, within(1e-12));
    double first = trunk.leaderLeadM;
    new Stature().run(context);
    assertThat(trunk.leaderLeadM).isGreaterThan(1.5 * first);
  }

  @Test
  void aLeaderAtThePaceOfTheShootsGetsNoLead() {
    YearContext context = grown(HABIT_SHARE, HABIT_SHARE);
    context.state.frame.leaderFactor = 1;
    for (int year = 0; year < YEARS; year++) {
      new Stature().run(context);
    }
    assertThat(context.state.trunk.shootLeadM).isPositive();
    assertThat(context.state.trunk.leaderLeadM).isZero();
  }

  /** However long it leads, the stem gets no more slender than those of the forest. */
  @Test
  void theLeadEndsAtTheSlendernessOfTheForest() {
    for (double factor = 1; factor < 2.4; factor += 0.2) {
      YearContext context = grown(1, 1);
      context.state.frame.heightFactor = factor;
      context.state.frame.leaderFactor = 3;
      double last = -1;
      for (int year = 0; year < YEARS; year++) {
        new Stature().run(context);
        double lead = context.state.trunk.leaderLeadM;
        assertThat(lead).isGreaterThan(last);
        assertThat(slender(context.state)).isLessThan(p.allocation().slenderestHeight());
        last = lead;
      }
    }
  }

  private double slender(TreeState state) {
    return state.frame.heightFactor
        * Allometry.heightM(p.species(), state.trunk.leaderStatureM())
        / Allometry.heightM(p.species(), state.trunk.dbhM());
  }

  /** A tree with a share of its leaves that has just made a ring of a share of its habit. */
  private YearContext grown(double leafShare, double ringShare) {
    MeasuredTree tree = MeasuredTree.openGrown(p.species(), 0.3, 1);
    TreeState state = TreeReconstruction.build(tree, p, 1);
    state.trunk.usualLeafM2 = state.leafAreaM2();
    for (int zone = 0; zone < state.limbs.count * Limbs.ZONES; zone++) {
      state.limbs.leafAreaM2[zone] *= leafShare;
    }
    double before = state.trunk.ringRadiusM[0];
    state.trunk.ringRadiusM[state.trunk.rings++] = before + ringShare * state.trunk.shootPaceM;
    YearContext context =
        new YearContext(state, new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = p;
    return context;
  }
}
