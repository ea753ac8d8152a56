package longbough.runner.validate.lab;

import java.util.ArrayList;
import java.util.List;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.VisitRow;
import longbough.model.parameter.Climate;
import longbough.model.parameter.ModelParameters;
import longbough.model.process.WindLoading;
import longbough.model.process.YearContext;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;
import longbough.model.visit.VisitRunner;

/** A tree as measured, in full leaf, on which a visit is done before any time passes. */
public final class FreshTree {
  private static final double PRICE = 80;

  private final TreeState start;
  private final ModelParameters parameters;
  private final Climate climate;

  private FreshTree(TreeState start, ModelParameters parameters, Climate climate) {
    this.start = start;
    this.parameters = parameters;
    this.climate = climate;
  }

  /** The mean open-grown tree of a temperate species at a trunk diameter, m. */
  public static FreshTree of(String species, double dbhM) {
    return of(species, dbhM, Lab.MARITIME);
  }

  /** The same in the climate in which the species lives. */
  public static FreshTree of(String species, double dbhM, Climate climate) {
    Lab lab = Lab.of(species, dbhM, climate, 1, 1);
    TreeState state = lab.alone(0).futures().get(0).snapshots().get(0);
    return new FreshTree(state, lab.meanParameters(), climate);
  }

  /** A copy to work on; nothing done to it touches this tree. */
  public YearContext stand() {
    TreeState state = new TreeState();
    state.copyFrom(start);
    state.year = 1;
    RandomStream random = new RandomStream();
    random.start(1, 0, state.year, VisitRunner.STREAM);
    YearContext context = new YearContext(state, new CarbonLedger(), new EventLog(true), random);
    context.parameters = parameters;
    context.month = Season.SUMMER.month();
    context.site.windExposure = 1;
    context.site.gustTenYearMs = climate.gustTenYearMs();
    context.site.gustFiftyYearMs = climate.gustFiftyYearMs();
    context.ledger.open(state.totalKgC());
    return context;
  }

  /** Does one operation on a standing copy. */
  public static VisitRow perform(YearContext tree, CutMix cuts, Operation operation) {
    List<VisitRow> rows = new ArrayList<>();
    Visit visit = new Visit(new Timing.Once(1), Season.SUMMER, List.of(operation), cuts);
    new VisitRunner().perform(visit, tree, PRICE, rows::add);
    return rows.get(0);
  }

  /** A standing copy with one operation done and its wind load known. */
  public YearContext after(Operation operation) {
    YearContext tree = stand();
    if (operation != null) {
      perform(tree, Lab.COLLAR, operation);
    }
    new WindLoading().run(tree);
    return tree;
  }
}
