package longbough.runner.validate.lab;

import java.util.Arrays;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.Flow;
import longbough.model.process.LightField;
import longbough.model.process.Phenology;
import longbough.model.process.Process;
import longbough.model.process.Weather;
import longbough.model.process.YearContext;
import longbough.model.random.RandomStream;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/** One tree held still in the mean year of its climate, on which single processes are measured. */
public final class Bench {
  private static final int MONTHS = 12;

  /** So large a reserve that it never limits. */
  private static final double PLENTY_KG_C = 1e6;

  public final YearContext context;

  private Bench(Lab lab, TreeState state) {
    context = new YearContext(state, new CarbonLedger(), new EventLog(false), new RandomStream());
    context.parameters = lab.meanParameters();
    new Weather(lab.climate(), lab.site()).mean(context.site);
    new Phenology().run(context);
    context.leafBuilt = 1;
    context.worstWater = 1;
    Arrays.fill(context.site.soilWaterShare, 1);
  }

  /** The mean tree in full leaf, with its light worked out. */
  public static Bench inLeaf(Lab lab) {
    Bench bench = new Bench(lab, lab.start());
    Limbs limbs = bench.context.state.limbs;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      limbs.leafAreaM2[zone] = limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone];
    }
    new LightField()
        .compute(
            bench.context.state,
            bench.context.light,
            bench.context.parameters,
            lab.site().openness());
    return bench;
  }

  /** Nothing of a tree but its trunk: no limbs, leaves, sprouts or roots. */
  public static Bench trunk(Lab lab, TreeState tree) {
    TreeState state = new TreeState();
    state.copyFrom(tree);
    state.limbs.count = 0;
    Arrays.fill(state.sprouts.woodKgC, 0);
    state.pools.coarseRootKgC = 0;
    state.pools.fineRootKgC = 0;
    return new Bench(lab, state);
  }

  /** The same warmth all year, degC. */
  public Bench at(double temperatureC) {
    Arrays.fill(context.site.temperatureC, temperatureC);
    return this;
  }

  /**
   * Months of two warmths in turn, degC, of which the first stands in the odd months: leaves of
   * both have grown at the mean of the two.
   */
  public Bench inTurn(double oddC, double evenC) {
    for (int month = 0; month < MONTHS; month++) {
      context.site.temperatureC[month] = month % 2 == 0 ? oddC : evenC;
    }
    return this;
  }

  /** What a process books under a flow in one month, 1 to 12, kg C. */
  public double monthKgC(Process process, Flow flow, int month) {
    context.ledger.open(0);
    context.month = month;
    context.state.pools.reserveKgC = PLENTY_KG_C;
    process.run(context);
    return context.ledger.amountKgC(flow);
  }

  /** The same share of soil water all year. */
  public Bench withWater(double share) {
    Arrays.fill(context.site.soilWaterShare, share);
    return this;
  }

  /** What a process books under a flow in the twelve months of a year, kg C. */
  public double yearKgC(Process process, Flow flow) {
    context.ledger.open(0);
    for (int month = 1; month <= MONTHS; month++) {
      context.month = month;
      context.state.pools.reserveKgC = PLENTY_KG_C;
      context.state.pools.compensation = 0;
      process.run(context);
    }
    return context.ledger.amountKgC(flow);
  }
}
