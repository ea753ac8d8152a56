package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import longbough.model.PlayedTrees;
import longbough.model.Simulation;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.Flow;
import longbough.model.parameter.CarbonParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.Limbs;
import longbough.shared.source.ParameterTable;
import longbough.shared.trait.SpeciesLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DroughtAndCropsTest {
  private static final int JULY = 7;
  private static final int YEARS = 20_000;

  private static YearContext july(String species) {
    YearContext context =
        new YearContext(
            new Simulation(
                    PlayedTrees.input(species, 0.4, 0.85, PlayedTrees.CONTINENTAL, List.of(), 1, 1))
                .startingTree(),
            new CarbonLedger(),
            new EventLog(false),
            new RandomStream());
    context.parameters = PlayedTrees.parameters(species);
    new Weather(PlayedTrees.CONTINENTAL, PlayedTrees.OPEN).mean(context.site);
    new Phenology().run(context);
    Arrays.fill(context.site.soilWaterShare, 1);
    context.month = JULY;
    return context;
  }

  /** 8 per cent of the crown, as in beech after 2018 (Frei et al. 2022), where a third was lost. */
  @Test
  void aDroughtWithoutPrecedentThinsTheCrown() {
    YearContext context = july("fagus-sylvatica");
    double before = buds(context);
    context.usualDrought = 0;
    context.worstWater = 0.66;
    new DroughtDieback().run(context);
    assertThat(1 - buds(context) / before).isCloseTo(0.081, within(0.001));
    assertThat(context.usualDrought).as("remembered").isCloseTo(0.034, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"fagus-sylvatica", "picea-abies", "quercus-ilex"})
  void aDroughtThatItIsUsedToTakesNothing(String species) {
    YearContext context = july(species);
    double before = buds(context);
    context.usualDrought = 0.4;
    context.worstWater = 0.6;
    new DroughtDieback().run(context);
    assertThat(buds(context)).isEqualTo(before);
  }

  private static double buds(YearContext context) {
    Limbs limbs = context.state.limbs;
    return Arrays.stream(limbs.budFullness, 0, limbs.count * Limbs.ZONES).sum();
  }

  /** Ciais et al. 2005: respiration fell together with assimilation. */
  @Test
  void respirationFallsWithAssimilationAsTheSoilDries() {
    double moist = respired(1);
    SpeciesParameters s = PlayedTrees.parameters("picea-abies").species();
    CarbonParameters p = PlayedTrees.parameters("picea-abies").carbon();
    double water = 1 - p.droughtDepth() * s.droughtSensitivity() * (1 - 0.1 / p.droughtThreshold());
    assertThat(respired(0.1) / moist)
        .isCloseTo(1 - p.dryRespiration() * (1 - water), within(1e-9))
        .isLessThan(0.7);
    assertThat(respired(0.5)).as("above the threshold").isEqualTo(moist);
  }

  private static double respired(double soilWater) {
    YearContext context = july("picea-abies");
    context.site.soilWaterShare[JULY - 1] = soilWater;
    new Maintenance(PlayedTrees.OPEN).run(context);
    return context.ledger.amountKgC(Flow.MAINTENANCE);
  }

  /** Spruce lives on the rain of the summer, oak also on that of the winter (Allen et al. 2019). */
  @Test
  void aShallowPlateRunsOutOfWaterFirst() {
    assertThat(afterThreeDryMonths("picea-abies", Double.NaN))
        .isLessThan(afterThreeDryMonths("picea-abies", 1) - 0.03);
    assertThat(afterThreeDryMonths("quercus-robur", Double.NaN))
        .isGreaterThan(afterThreeDryMonths("quercus-robur", 1) + 0.03);
  }

  private static double afterThreeDryMonths(String species, double reach) {
    YearContext context = july(species);
    if (!Double.isNaN(reach)) {
      ParameterTable table =
          PlayedTrees.with(PlayedTrees.table(species), "species.rooting_reach", reach);
      context.parameters = ModelParameters.of(SpeciesLibrary.load().get(species), table);
    }
    context.light.radiusM = 4;
    context.light.allLeafAreaM2 = 200;
    for (int month = JULY; month < JULY + 3; month++) {
      context.month = month;
      context.site.rainMm[month - 1] = 10;
      new SoilWater(PlayedTrees.OPEN).run(context);
    }
    return context.site.soilWaterShare[JULY + 1];
  }

  /**
   * Healy et al. 1999: of eleven years the two best gave 55 per cent of the acorns of red oaks, the
   * five poorest 10 per cent.
   */
  @Test
  void mostYearsBearLittleAndSomeAFullMast() {
    YearContext context = july("quercus-rubra");
    CarbonParameters p = context.parameters.carbon();
    context.state.trunk.heightM = context.parameters.species().heightMaxM();
    OtherSinks sinks = new OtherSinks();
    double best = 0;
    double poorest = 0;
    double all = 0;
    double most = 0;
    for (int run = 0; run < YEARS / 11; run++) {
      double[] crop = new double[11];
      for (int year = 0; year < crop.length; year++) {
        context.random.start(77, run, year, sinks.name());
        context.state.pools.growthBudgetKgC = 1;
        sinks.run(context);
        crop[year] = 1 - context.state.pools.growthBudgetKgC - p.otherSinks();
      }
      Arrays.sort(crop);
      all += Arrays.stream(crop).sum();
      best += crop[9] + crop[10];
      poorest += Arrays.stream(crop, 0, 5).sum();
      most = Math.max(most, crop[10]);
    }
    assertThat(best / all).as("the two best years").isBetween(0.38, 0.60);
    assertThat(poorest / all).as("the five poorest").isBetween(0.08, 0.22);
    assertThat(all / YEARS).as("the mean").isCloseTo(p.seedShare(), within(0.02));
    assertThat(most).isLessThanOrEqualTo(p.seedMost() + 1e-12);
  }
}
