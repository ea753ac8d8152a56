package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.TreeReconstruction;
import org.junit.jupiter.api.Test;

/** Which leaves insects and frost take, and what an evergreen's canopy then earns. */
class DefoliationTest {
  private static final double NEW = 0.2;

  /** Budworm: the young needles of firs go first, older ones when those are gone. */
  @Test
  void takesTheYoungNeedlesOfFirsFirst() {
    YearContext some = eaten("abies-alba", NEW / 2, 0);
    assertThat(some.state.pools.leafAgeShare[0]).isCloseTo(NEW / 2 / (1 - NEW / 2), within(1e-12));
    YearContext whole = context("abies-alba");
    assertThat(some.leafVigour)
        .isLessThan(LeafAgeing.vigour(whole.state.pools, whole.parameters, false));
    YearContext more = eaten("abies-alba", 0.5, 0);
    assertThat(more.state.pools.leafAgeShare[0]).isZero();
    assertThat(more.newLeafShare[0]).isZero();
  }

  /** Sawflies: needles of pines of all ages alike. */
  @Test
  void takesNeedlesOfPinesOfAllAges() {
    YearContext context = eaten("pinus-sylvestris", 0.5, 0);
    assertThat(context.state.pools.leafAgeShare[0]).isCloseTo(NEW, within(1e-12));
    assertThat(context.newLeafShare[0]).isCloseTo(NEW, within(1e-12));
  }

  /** Late frost kills young shoots alone. */
  @Test
  void frostTakesTheYoungAlone() {
    YearContext context = eaten("pinus-sylvestris", 0, 0.5);
    assertThat(context.state.vitality.defoliation).isCloseTo(NEW / 2, within(1e-12));
    assertThat(context.state.pools.leafAgeShare[0])
        .isCloseTo(NEW / 2 / (1 - NEW / 2), within(1e-12));
  }

  /** What is asked for is what is lost, whichever leaves it is, and the carbon goes with it. */
  @Test
  void losesWhatIsEaten() {
    for (String species : new String[] {"abies-alba", "pinus-sylvestris", "quercus-robur"}) {
      for (double share : new double[] {0.05, 0.5, 0.95}) {
        YearContext whole = context(species);
        YearContext eaten = eaten(species, share, 0);
        assertThat(eaten.state.leafAreaM2())
            .as(species)
            .isCloseTo((1 - share) * whole.state.leafAreaM2(), within(1e-9));
        assertThat(eaten.state.leafKgC())
            .as(species)
            .isCloseTo((1 - share) * whole.state.leafKgC(), within(1e-9));
        assertThat(eaten.state.vitality.defoliation).as(species).isCloseTo(share, within(1e-12));
      }
    }
  }

  /** Reich et al. 2009: the capacity of a leaf has fallen by 39 % at its mean life span. */
  @Test
  void leavesOfTheirLifeSpanEarnTwoFifthsLess() {
    YearContext context = context("abies-alba");
    double fresh = vigour(context, 0);
    double life = context.parameters.species().leafLifeYears();
    double spent = vigour(context, (int) Math.ceil(life));
    double first = 0.39 / 2 / life;
    assertThat(spent / fresh).isCloseTo((1 - 0.39) / (1 - first), within(1e-9));
    assertThat(fresh).isGreaterThan(1);
  }

  /** A canopy renewed evenly earns what the species' capacity says, summer and winter. */
  @Test
  void anEvenCanopyIsTheMeasure() {
    for (String species : new String[] {"abies-alba", "pinus-sylvestris", "quercus-ilex"}) {
      YearContext context = context(species);
      TreeState state = TreeReconstruction.build(tree(context.parameters), context.parameters, 1);
      assertThat(LeafAgeing.dormant(state.pools, context.parameters))
          .as(species)
          .isCloseTo(1, within(1e-12));
    }
    YearContext oak = eaten("quercus-robur", 0.5, 0);
    assertThat(LeafAgeing.vigour(oak.state.pools, oak.parameters, false)).isEqualTo(1);
  }

  /**
   * Needles that are left stay shade needles in the light that falls in; broadleaves take up more.
   */
  @Test
  void needlesStayAsTheyWereBuilt() {
    YearContext fir = context("abies-alba");
    LightInterception light = new LightInterception();
    fir.light.stale = true;
    light.run(fir);
    double[] before = fir.light.capacityShare.clone();
    double[] dim = fir.light.lightShare.clone();
    fir.site.insectDefoliation = 0.6;
    new Defoliation().run(fir);
    light.run(fir);
    assertThat(fir.light.capacityShare).containsExactly(before);
    assertThat(Arrays.stream(fir.light.lightShare).sum()).isGreaterThan(Arrays.stream(dim).sum());
  }

  /** Buds return the slower the more of the leaves beside them were eaten; a whole shoot is fed. */
  @Test
  void strippedShootsStarveTheirBuds() {
    YearContext whole = context("quercus-robur");
    YearContext half = eaten("quercus-robur", 0.5, 0);
    assertThat(ShootFeed.share(whole.state.limbs, 0, 1)).isCloseTo(1, within(1e-9));
    double twigs = half.parameters.allocation().twigLoss() * 0.5;
    assertThat(ShootFeed.share(half.state.limbs, 0, 1)).isCloseTo(0.5 / (1 - twigs), within(1e-9));
  }

  private static double vigour(YearContext context, int age) {
    double[] share = context.state.pools.leafAgeShare;
    Arrays.fill(share, 0);
    share[age] = 1;
    return LeafAgeing.vigour(context.state.pools, context.parameters, false);
  }

  private static YearContext eaten(String species, double insects, double frost) {
    YearContext context = context(species);
    context.site.insectDefoliation = insects;
    context.site.frostLoss = frost;
    new Defoliation().run(context);
    return context;
  }

  /** A tree in leaf, a fifth of whose leaves is new where it is an evergreen. */
  private static YearContext context(String species) {
    ModelParameters p = PlayedTrees.parameters(species);
    TreeState state = TreeReconstruction.build(tree(p), p, 1);
    double fresh = p.species().evergreen() ? NEW : 1;
    double[] share = state.pools.leafAgeShare;
    for (int age = 0; age < share.length; age++) {
      share[age] = age == 0 ? fresh : age == 1 ? 1 - fresh : 0;
    }
    YearContext context =
        new YearContext(state, new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = p;
    context.ledger.open(state.totalKgC());
    Arrays.fill(context.newLeafShare, fresh);
    Arrays.fill(context.newSproutLeafShare, fresh);
    context.newCanopyShare = fresh;
    return context;
  }

  private static MeasuredTree tree(ModelParameters p) {
    return MeasuredTree.openGrown(p.species(), 0.3, 1);
  }
}
