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
import org.junit.jupiter.api.Test;

/** The rise in leaves left after a loss is one of capacity: leaves that lack light gain nothing. */
class CompensationTest {
  private static final ModelParameters P = PlayedTrees.parameters("tilia-cordata");
  private static final int MIDSUMMER = 7;

  /** A July day of the maritime climate, MJ m-2. */
  private static final double JULY_MJ = 22.4;

  /** As much light as leaves are saturated with in the chambers of experiments. */
  private static final double SATURATING_MJ = 1e5;

  /** Clearness of a fair month, and of one without sun. */
  private static final double FAIR = 0.55;

  private static final double OVERCAST = 0.02;

  /** Carbon earned by leaves that take up so much of the light, kg C m-2 in a month. */
  private static double earned(
      double lightShare, double radiation, double clearness, double compensation) {
    TreeState state = new TreeState();
    state.pools.compensation = compensation;
    YearContext context =
        new YearContext(state, new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = P;
    context.month = MIDSUMMER;
    context.leafBuilt = 1;
    Arrays.fill(context.leafOn, 1);
    Arrays.fill(context.site.temperatureC, P.carbon().optimumTemperatureC());
    Arrays.fill(context.site.radiationMjM2Day, radiation);
    Arrays.fill(context.site.aboveAirMjM2Day, radiation / clearness);
    Arrays.fill(context.site.dayLengthH, 16);
    Arrays.fill(context.site.soilWaterShare, 1);
    Arrays.fill(context.light.lightShare, lightShare);
    Arrays.fill(context.light.capacityShare, Foliage.capacityShare(P, lightShare));
    new Assimilation(PlayedTrees.OPEN).run(context);
    return context.light.returnKgCM2[0];
  }

  private static double gain(double lightShare, double radiation, double clearness) {
    double risen = earned(lightShare, radiation, clearness, P.carbon().compensationMax());
    return risen / earned(lightShare, radiation, clearness, 0) - 1;
  }

  /** Light-saturated leaves rise by just the published 0.36 to 0.40. */
  @Test
  void saturatedLeavesRiseAsPublished() {
    assertThat(gain(1, SATURATING_MJ, FAIR))
        .isCloseTo(P.carbon().compensationMax(), within(1e-3))
        .isBetween(0.36, 0.40);
  }

  /**
   * In a hundredth of the light of a sky without sun leaves gain less than a tenth of what
   * saturated ones do, and the less light the less, towards nothing. Where the sun shines into deep
   * shade it is the few leaves in flecks that gain.
   */
  @Test
  void deepShadeGainsNearlyNothing() {
    assertThat(gain(0.01, JULY_MJ, OVERCAST)).isBetween(0.0, P.carbon().compensationMax() / 10);
    assertThat(gain(0.001, JULY_MJ, OVERCAST)).isBetween(0.0, P.carbon().compensationMax() / 100);
    assertThat(gain(P.allocation().lightLowTolerant(), JULY_MJ, OVERCAST))
        .as("where the lowest leaves of shade trees live")
        .isBetween(0.0, P.carbon().compensationMax() / 5);
    assertThat(gain(0.01, JULY_MJ, FAIR))
        .as("with flecks")
        .isBetween(P.carbon().compensationMax() / 10, P.carbon().compensationMax() / 2);
  }

  /** A rise in the light instead would lift them all alike. */
  @Test
  void theMoreLightTheMoreIsGained() {
    double last = 0;
    for (double radiation = 1; radiation < 1e4; radiation *= 3) {
      double gain = gain(0.6, radiation, FAIR);
      assertThat(gain).isGreaterThan(last).isLessThan(P.carbon().compensationMax());
      last = gain;
    }
  }
}
