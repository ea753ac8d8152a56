package longbough.model;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import longbough.model.history.CarbonLedger;
import longbough.model.history.Flow;
import longbough.model.parameter.Climate;
import longbough.model.parameter.DryYears;
import longbough.model.parameter.Site;
import longbough.model.process.Assimilation;
import longbough.model.process.BarkBeetles;
import longbough.model.process.BudBreak;
import longbough.model.process.Compartmentalization;
import longbough.model.process.CrownPotential;
import longbough.model.process.Decline;
import longbough.model.process.Defoliation;
import longbough.model.process.DroughtDieback;
import longbough.model.process.Extension;
import longbough.model.process.FailureProbability;
import longbough.model.process.Heartwood;
import longbough.model.process.LeafAgeing;
import longbough.model.process.LeafFall;
import longbough.model.process.LeafFlush;
import longbough.model.process.LeafWater;
import longbough.model.process.LightInterception;
import longbough.model.process.LimbResistance;
import longbough.model.process.Maintenance;
import longbough.model.process.OtherSinks;
import longbough.model.process.Phenology;
import longbough.model.process.Process;
import longbough.model.process.RadialGrowth;
import longbough.model.process.Refoliation;
import longbough.model.process.ReserveBalance;
import longbough.model.process.ReserveCeiling;
import longbough.model.process.RootRenewal;
import longbough.model.process.Shedding;
import longbough.model.process.SoilWater;
import longbough.model.process.SproutGrowth;
import longbough.model.process.SproutRelease;
import longbough.model.process.Stature;
import longbough.model.process.Survival;
import longbough.model.process.TrunkResistance;
import longbough.model.process.TrunkSections;
import longbough.model.process.TrunkStrength;
import longbough.model.process.Weather;
import longbough.model.process.WindFailure;
import longbough.model.process.WindLoading;
import longbough.model.process.WoundClosure;
import longbough.model.process.YearContext;
import longbough.model.state.Pools;
import longbough.model.visit.VisitRunner;

/**
 * The one list that says who acts when in the year, and why in that order. Months count from
 * midwinter.
 *
 * <ol>
 *   <li>The year is drawn: weather, then phenology from its temperatures.
 *   <li>Each month: the crew (a cut acts on the tree as the month finds it); buds break and sprouts
 *       awaken in the first month of leaf, since they answer what was cut before; light, which
 *       needs the leaves; the flush, which needs the light to build sun and shade leaves; in early
 *       summer insects and frost, a month later what grows again; water, assimilation, maintenance,
 *       and last what becomes of the surplus.
 *   <li>Leaf fall in autumn, of broadleaved evergreens in spring just before their buds break.
 *   <li>At the year's end the growth budget is spent: seeds and exudates, roots, sprouts, shoots,
 *       and rings last, because they give way first; lasting stress grows or heals; then what grew
 *       sets heartwood, reserve ceiling and next year's leaf; limbs that didn't pay are shed;
 *       wounds close and decay spreads by this year's ring; the trunk's strength meets the year's
 *       gust; and the tree lives or dies.
 * </ol>
 *
 * <p>Who may write what ({@link longbough.model.process.StatePart}; each process says so itself and
 * a test holds it to that). The crew's cuts may change every part:
 *
 * <pre>
 * trunk     Extension, Heartwood, RadialGrowth, Stature
 * limbs     CrownPotential, Extension, RadialGrowth, Shedding, SproutGrowth, SproutRelease,
 *           WindFailure
 * foliage   BudBreak, CrownPotential, Defoliation, DroughtDieback, Extension, LeafFall, LeafFlush, Shedding,
 *           Refoliation, SproutGrowth, WindFailure
 * sprouts   BudBreak, Defoliation, Extension, LeafFall, LeafFlush, Shedding, SproutGrowth,
 *           SproutRelease, WindFailure
 * wounds    Compartmentalization, Shedding, WindFailure, WoundClosure
 * sections  TrunkSections, TrunkStrength
 * pools     Assimilation, Extension, Heartwood, Maintenance, OtherSinks, RadialGrowth,
 *           ReserveBalance, RootRenewal, SproutGrowth, SproutRelease
 * reserve   Assimilation, Defoliation, LeafFlush, Maintenance, RadialGrowth, ReserveBalance,
 *           ReserveCeiling, Refoliation, SproutRelease, WindFailure
 * roots     RootRenewal
 * vitality  Decline, Defoliation, FailureProbability, Maintenance,
 *           Refoliation, Survival, WindFailure
 * </pre>
 *
 * One a thread: processes keep scratch space, but nothing from year to year.
 */
final class YearlyCycle {
  private static final int MONTHS = 12;
  private static final int EARLY_SUMMER = 6;
  private static final int MIDSUMMER = 7;
  private static final int LATE_SUMMER = 8;
  private static final int AUTUMN = 10;

  private final Weather weather;
  private final Process phenology = new Phenology();
  private final Process reserveCeiling = new ReserveCeiling();
  private final Process light = new LightInterception();
  private final Process sproutRelease = new SproutRelease();
  private final Process budBreak = new BudBreak();
  private final Process leafFlush = new LeafFlush();
  private final Process defoliation = new Defoliation();
  private final Process refoliation = new Refoliation();
  private final Process sections = new TrunkSections();
  private final Process strength = new TrunkStrength();
  private final Process windLoading = new WindLoading();
  private final Process trunkResistance = new TrunkResistance();
  private final Process limbResistance = new LimbResistance();
  private final Process failureProbability = new FailureProbability();
  private final Process soilWater;
  private final Process assimilation;
  private final Process maintenance;
  private final Process reserveBalance = new ReserveBalance();
  private final Process leafFall = new LeafFall();
  private final List<Process> yearEnd;
  private final Crew crew;

  YearlyCycle(Climate climate, Site place, Crew crew) {
    this(climate, place, DryYears.BY_CHANCE, crew);
  }

  YearlyCycle(Climate climate, Site place, DryYears dryYears, Crew crew) {
    this.weather = new Weather(climate, place, dryYears);
    this.crew = crew;
    this.soilWater = new SoilWater(place);
    this.assimilation = new Assimilation(place);
    this.maintenance = new Maintenance(place);
    this.yearEnd =
        List.of(
            new OtherSinks(),
            new RootRenewal(),
            new SproutGrowth(),
            new Extension(),
            new RadialGrowth(),
            new Stature(),
            new Decline(),
            new Heartwood(),
            reserveCeiling,
            new CrownPotential(),
            new DroughtDieback(),
            new Shedding(),
            new WoundClosure(),
            new Compartmentalization(),
            sections,
            strength,
            windLoading,
            trunkResistance,
            limbResistance,
            failureProbability,
            new WindFailure(),
            new BarkBeetles(),
            new Survival());
  }

  /** Every process of the year, each once, in no particular order. */
  List<Process> processes() {
    Set<Process> all = new LinkedHashSet<>();
    all.addAll(
        List.of(
            weather,
            phenology,
            reserveCeiling,
            light,
            sproutRelease,
            budBreak,
            leafFlush,
            defoliation,
            refoliation,
            leafFall));
    all.addAll(List.of(soilWater, assimilation, maintenance, reserveBalance));
    all.addAll(yearEnd);
    return List.copyOf(all);
  }

  /** Who comes to prune, and when. */
  interface Crew {
    /** Whether any visit falls due in the month at hand; it is then taken as done. */
    boolean due(YearContext context);

    /** Does what is due; asked for only then. */
    default void visit(YearContext context) {}
  }

  /** Plays one year of a living tree and closes its carbon account. */
  void run(YearContext context, long seed, int member) {
    start(context);
    run(weather, context, seed, member);
    run(phenology, context, seed, member);
    run(reserveCeiling, context, seed, member);
    boolean budsOpen = false;
    boolean leavesDown = false;
    for (int month = 1; month <= MONTHS; month++) {
      context.month = month;
      prune(context, seed, member);
      if (!budsOpen && context.leafCalled[month * YearContext.WEEKS - 1] > 0) {
        budsOpen = true;
        run(sproutRelease, context, seed, member);
        if (context.parameters.species().exchangesInSpring()) {
          leavesDown = true;
          leafFall.run(context);
        }
        run(budBreak, context, seed, member);
      }
      if (budsOpen || context.parameters.species().evergreen()) {
        light.run(context);
      }
      boolean unfolding = budsOpen && context.leafBuilt < 1;
      context.span = unfolding ? 1.0 / YearContext.WEEKS : 1;
      context.week = 0;
      if (unfolding) {
        leafFlush.run(context);
      }
      if (month == EARLY_SUMMER) {
        run(defoliation, context, seed, member);
      }
      if (month == MIDSUMMER || month == LATE_SUMMER) {
        refoliation.run(context);
      }
      if (budsOpen || context.parameters.species().evergreen()) {
        light.run(context);
      }
      soilWater.run(context);
      exchange(context, unfolding);
      if (month == LATE_SUMMER) {
        context.summerLeafAreaM2 = context.state.leafAreaM2();
        context.summerSproutLeafAreaM2 = context.state.sprouts.leafAreaM2();
      }
      if (month == AUTUMN) {
        context.light.keepSeason();
        context.autumnReserveKgC = context.state.pools.reserveKgC;
        context.autumnReserveFraction = context.state.pools.reserveFraction();
      }
      if (!leavesDown && month > LATE_SUMMER && falls(context, month)) {
        leavesDown = true;
        leafFall.run(context);
      }
    }
    for (int i = 0; i < yearEnd.size(); i++) {
      run(yearEnd.get(i), context, seed, member);
    }
    overflow(context);
    refuseDebt(context);
    context.ledger.close(context.state.year, context.state.totalKgC());
  }

  /**
   * What leaves earn and the living tree respires in a month. While leaves unfold this goes week by
   * week, since the first of them soon pay for the next.
   */
  private void exchange(YearContext context, boolean unfolding) {
    int steps = unfolding ? YearContext.WEEKS : 1;
    for (context.week = 0; context.week < steps; context.week++) {
      if (context.week > 0) {
        leafFlush.run(context);
        light.run(context);
      }
      assimilation.run(context);
      maintenance.run(context);
      reserveBalance.run(context);
    }
    context.week = 0;
    context.span = 1;
  }

  /** Fills what is derived from the state before the first year. */
  void measure(YearContext context) {
    weather.mean(context.site);
    context.light.stale = true;
    light.run(context);
    context.light.keepSeason();
    context.usualDrought = usualDrought(context);
    for (Process process :
        List.of(
            sections, strength, windLoading, trunkResistance, limbResistance, failureProbability)) {
      process.run(context);
    }
    context.light.stale = true;
  }

  /** What the driest month of a mean year takes of assimilation. */
  private double usualDrought(YearContext context) {
    phenology.run(context);
    double driest = 1;
    for (context.month = 1; context.month <= MONTHS; context.month++) {
      soilWater.run(context);
      if (context.leafOn[context.month - 1] > 0.5) {
        driest = Math.min(driest, LeafWater.allows(context));
      }
    }
    context.soilWaterMm = Double.NaN;
    return 1 - driest;
  }

  private static void start(YearContext context) {
    // What grew since autumn has changed an evergreen's light, whether or not a crew comes by.
    context.light.stale = true;
    context.ledger.open(context.state.totalKgC());
    context.worstWater = 1;
    context.maintenanceNeedKgC = 0;
    context.netKgC = 0;
    context.earnedKgC = 0;
    context.leafDebtKgC = 0;
    context.leafBuilt = 0;
    context.newCanopyShare = 0;
    context.leafVigour = LeafAgeing.dormant(context.state.pools, context.parameters);
    context.light.capacityKept = false;
    context.refoliationM2 = 0;
    Arrays.fill(context.newLeafShare, 0);
    Arrays.fill(context.newSproutLeafShare, 0);
    Arrays.fill(context.light.returnKgCM2, 0);
  }

  private static void run(Process process, YearContext context, long seed, int member) {
    context.random.start(seed, member, context.state.year, process.name());
    process.run(context);
  }

  /** The crew's cuts, and the harder work of the leaves they leave. */
  private void prune(YearContext context, long seed, int member) {
    if (!crew.due(context)) {
      return;
    }
    double before = context.state.leafAreaM2();
    context.random.start(seed, member, context.state.year, VisitRunner.STREAM);
    crew.visit(context);
    reserveCeiling.run(context);
    if (before > 0 && !context.parameters.species().conifer()) {
      double lost = Math.max(0, 1 - context.state.leafAreaM2() / before);
      double rise =
          Math.min(
              context.parameters.carbon().compensationMax(),
              context.parameters.carbon().compensationPerLoss() * lost);
      context.state.pools.compensation = Math.max(context.state.pools.compensation, rise);
    }
    context.light.stale = true;
  }

  /**
   * Deciduous leaves fall when fewer than half are held; conifers drop the oldest in mid-autumn,
   * broadleaved evergreens have done so in spring.
   */
  private static boolean falls(YearContext context, int month) {
    return month == MONTHS
        || month > LATE_SUMMER + 1 && context.leafOn[month - 1] < 0.5
        || context.parameters.species().evergreen() && month == LATE_SUMMER + 2;
  }

  /** A pool below nothing would balance the account by a debt that no tree can have. */
  private static void refuseDebt(YearContext context) {
    Pools pools = context.state.pools;
    double least =
        Math.min(
            Math.min(pools.reserveKgC, pools.growthBudgetKgC),
            Math.min(pools.fineRootKgC, pools.coarseRootKgC));
    if (!(least >= 0 || least >= -CarbonLedger.TOLERANCE * (1 + context.state.totalKgC()))) {
      throw new IllegalStateException(
          "year " + context.state.year + ": a carbon pool has fallen to " + least + " kg C");
    }
  }

  /** Sugar that growth left over and that the living wood can't hold. */
  private static void overflow(YearContext context) {
    double over = context.state.pools.reserveKgC - context.state.pools.reserveCeilingKgC;
    if (over > 0) {
      context.state.pools.reserveKgC -= over;
      context.ledger.book(Flow.OVERFLOW, over);
    }
  }
}
