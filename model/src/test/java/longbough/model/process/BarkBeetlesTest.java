package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;

import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.tree.TreeReconstruction;
import org.junit.jupiter.api.Test;

/** Which trees bark beetles take: conifers whose rings have stopped for years, and no others. */
class BarkBeetlesTest {
  private static final int TREES = 4000;

  /** The rate is the parameter's; 0.02 is four standard errors. */
  @Test
  void aConiferWhoseRingsHaveStoppedDiesAtTheFullRate() {
    double hazard = PlayedTrees.parameters("pinus-sylvestris").survival().beetleHazard();
    assertThat(killed("pinus-sylvestris", 0, 0))
        .isBetween(Math.max(0.001, hazard - 0.02), hazard + 0.02);
  }

  /** Attacks struck in the second year (Cedervind et al. 2003): one bad ring is not enough. */
  @Test
  void oneGoodRingOfTheLastTwoSaves() {
    assertThat(killed("pinus-sylvestris", 1, 0)).isZero();
    assertThat(killed("pinus-sylvestris", 0, 1)).isZero();
  }

  @Test
  void halfOfTheUsualRingAndMoreIsSafeAndLessIsTheMoreDangerousTheLessItIs() {
    assertThat(killed("picea-abies", 0.6, 0.6)).isZero();
    double quarter = killed("picea-abies", 0.25, 0.25);
    assertThat(quarter).isPositive().isLessThan(killed("picea-abies", 0.05, 0.05));
  }

  @Test
  void broadleavesAreSpared() {
    assertThat(killed("quercus-robur", 0, 0)).isZero();
  }

  /** Share of the trees killed whose last two rings were these shares of their habit. */
  private static double killed(String species, double before, double last) {
    ModelParameters p = PlayedTrees.parameters(species);
    TreeState state = TreeReconstruction.build(PlayedTrees.tree(p.species(), 0.3, 0.85), p, 1);
    Trunk trunk = state.trunk;
    double radius = trunk.ringRadiusM[0];
    trunk.ringRadiusM[1] = radius + before * trunk.ringMemoryM;
    trunk.ringRadiusM[2] = trunk.ringRadiusM[1] + last * trunk.ringMemoryM;
    trunk.rings = 3;
    YearContext context =
        new YearContext(state, new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = p;
    BarkBeetles beetles = new BarkBeetles();
    int dead = 0;
    for (int member = 0; member < TREES; member++) {
      state.vitality.alive = true;
      state.vitality.cause = CauseOfDeath.NONE;
      context.random.start(1, member, 1, beetles.name());
      beetles.run(context);
      dead += state.vitality.alive ? 0 : 1;
    }
    return (double) dead / TREES;
  }
}
