package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.TreeReconstruction;
import org.junit.jupiter.api.Test;

/** What the shoots keep pace with. */
class StatureTest {
  private static final double HABIT_SHARE = 0.4;
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
    context.state.trunk.shootLeadM = 10 * context.state.trunk.dbhM();
    double lead = context.state.trunk.shootLeadM;
    new Stature().run(context);
    assertThat(context.state.trunk.shootLeadM).isEqualTo(lead);
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
