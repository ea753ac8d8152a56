package longbough.runner.validate.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import longbough.model.parameter.CarbonParameters;
import longbough.model.parameter.ReserveParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.process.Assimilation;
import longbough.model.process.Maintenance;
import longbough.model.process.ReserveBalance;
import longbough.model.process.YearContext;
import longbough.model.state.Pools;
import longbough.model.state.TreeState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A tree's year of sugar, from light in the crown to reserve and growth, against the same balance
 * written down a second time as one differential equation and solved by SciPy while the test runs.
 * Only plain numbers go over: leaf and light by cell, climate, pools, parameters. Skipped where
 * Python or SciPy is missing.
 */
class IndependentCarbonYearTest {
  private static final int MONTHS = 12;

  /**
   * Above it, sugar is never short and the monthly steps are exact: rounding and tolerance only.
   */
  private static final double EXACT = 1e-6;

  @ParameterizedTest
  @CsvSource({
    "tilia-cordata, 0.3, 0.8",
    "quercus-robur, 0.6, 0.75",
    "acer-platanoides, 0.1, 0.85",
    "betula-pendula, 0.2, 0.95"
  })
  void reserveAndGrowthMeetScipy(String species, double dbhM, double startShare) throws Exception {
    String python = python();
    assumeTrue(python != null, "skipped: python3 with the package 'scipy' is not installed here");
    Lab lab = Lab.of(species, dbhM, Lab.MARITIME, 1, 1);
    YearContext context = Bench.inLeaf(lab).context;
    Pools pools = context.state.pools;
    pools.reserveKgC = startShare * pools.reserveCeilingKgC;
    pools.growthBudgetKgC = 0;
    pools.compensation = 0;
    String[] rows = scipy(python, numbers(lab, context)).split("\n");
    assertThat(rows).hasSize(MONTHS);
    context.ledger.open(context.state.totalKgC());
    Assimilation assimilation = new Assimilation(lab.site());
    Maintenance maintenance = new Maintenance(lab.site());
    ReserveBalance balance = new ReserveBalance();
    for (int month = 1; month <= MONTHS; month++) {
      context.month = month;
      assimilation.run(context);
      maintenance.run(context);
      balance.run(context);
      double[] there =
          Arrays.stream(rows[month - 1].split(" ")).mapToDouble(Double::parseDouble).toArray();
      double close = EXACT * pools.reserveCeilingKgC;
      assertThat(pools.reserveKgC).as("reserve, month " + month).isCloseTo(there[0], within(close));
      assertThat(pools.growthBudgetKgC)
          .as("growth, month " + month)
          .isCloseTo(there[1], within(close));
    }
    assertThat(pools.growthBudgetKgC).as("it is a year of growth").isPositive();
  }

  private static Map<String, Object> numbers(Lab lab, YearContext context) {
    Map<String, Object> n = new LinkedHashMap<>();
    CarbonParameters c = context.parameters.carbon();
    ReserveParameters r = context.parameters.reserve();
    SpeciesParameters s = context.parameters.species();
    TreeState state = context.state;
    n.put("t", context.site.temperatureC);
    n.put("radiation", context.site.radiationMjM2Day);
    n.put("day_h", context.site.dayLengthH);
    n.put("leaf_on", context.leafOn);
    n.put("leaf_m2", context.light.leafAreaM2);
    n.put("light", context.light.lightShare);
    n.put("par_share", c.parShare());
    n.put("photons_per_joule", c.photonsPerJoule());
    n.put("absorptance", c.leafAbsorptance());
    n.put("quantum_yield", c.quantumYield());
    n.put("uneven", c.unevenLight());
    n.put("shade", c.shadeCapacity(s));
    n.put("above_air", context.site.aboveAirMjM2Day);
    n.put("beam_slope", context.parameters.light().beamSlope());
    n.put("clear_sky", context.parameters.light().clearSky());
    n.put("unshaded", context.parameters.light().unshaded(s));
    n.put("season_capacity", context.light.seasonCapacity);
    n.put("mean_leaf", c.meanLeaf());
    n.put("suppressed", c.suppressedUpkeep());
    n.put("full_sun", c.fullSunShare());
    n.put("t_opt", c.optimumTemperatureC());
    n.put("t_width", c.temperatureWidthC());
    n.put("daytime_warmth", c.daytimeWarmthC());
    n.put("q10", c.q10());
    n.put("acclimation", c.leafAcclimation());
    n.put("day_share", c.dayRespirationShare());
    n.put("capacity", lab.site().growthFactor() * s.photosyntheticCapacityUmolM2S());
    n.put("dark_ratio", s.darkRespirationRatio());
    n.put("thirst", context.parameters.decline().thirst());
    n.put("hidden", context.parameters.decline().hiddenShare());
    n.put("decline", state.vitality.decline);
    n.put("ailment", state.vitality.ailment);
    n.put("wood_rate", c.sapwoodRespiration(s));
    n.put("root_rate", c.fineRootRespiration());
    n.put("current_sugar", c.currentSugarShare());
    n.put("active_m", c.activeSapwoodM());
    n.put("full_respiration", c.fullRespiration());
    n.put("half", c.respirationHalf());
    n.put("dbh_m", state.trunk.dbhM());
    n.put("sapwood_share", state.trunk.sapwoodShare);
    n.put("branch_living", r.branchLivingShare());
    n.put("limbs", state.limbs.livingWoodKgC());
    n.put("trunk", state.pools.trunkSapwoodKgC + state.pools.trunkHeartwoodKgC);
    n.put("coarse_roots", state.pools.coarseRootKgC);
    n.put("fine_roots", state.pools.fineRootKgC);
    n.put("ceiling", state.pools.reserveCeilingKgC);
    n.put("floor", state.pools.reserveFloorKgC);
    n.put("start", state.pools.reserveKgC);
    n.put("set_point", r.setPoint());
    n.put("spring_set_point", r.springSetPoint());
    n.put("storage_least", r.storageLeast());
    n.put("storage_slope", r.storageSlope());
    n.put("release", r.releaseShare());
    return n;
  }

  private static String scipy(String python, Map<String, Object> numbers) throws Exception {
    String script;
    try (InputStream in = IndependentCarbonYearTest.class.getResourceAsStream("carbon_year.py")) {
      script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    Process process = new ProcessBuilder(python, "-c", script).start();
    String json =
        numbers.entrySet().stream()
            .map(e -> "\"" + e.getKey() + "\":" + plain(e.getValue()))
            .collect(Collectors.joining(",", "{", "}"));
    process.getOutputStream().write(json.getBytes(StandardCharsets.UTF_8));
    process.getOutputStream().close();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String error = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(error).isZero();
    return text;
  }

  private static String plain(Object value) {
    return value instanceof double[] many ? Arrays.toString(many) : value.toString();
  }

  /**
   * The first Python at hand that has SciPy, or null: Debian's may not be the first in the path.
   */
  private static String python() throws InterruptedException {
    for (String python : List.of("python3", "/usr/bin/python3")) {
      try {
        Process process =
            new ProcessBuilder(python, "-c", "import scipy.integrate")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0) {
          return python;
        }
      } catch (IOException missing) {
        // Not here: the next one.
      }
    }
    return null;
  }
}
