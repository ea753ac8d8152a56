package longbough.model.visit;

import java.util.List;
import java.util.function.Consumer;
import longbough.model.editor.Editors;
import longbough.model.history.TreeEvent;
import longbough.model.history.VisitRow;
import longbough.model.process.YearContext;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Visit;
import longbough.model.state.Pools;
import longbough.model.state.TreeState;
import longbough.model.surgery.OperationTally;
import longbough.model.surgery.Surgery;

/**
 * Performs a visit: each operation in its order, on the tree as the one before left it. One a
 * thread; holds nothing from visit to visit.
 */
public final class VisitRunner {
  /** Name of the random stream that the caller starts for the year before a visit. */
  public static final String STREAM = "pruning";

  private static final double MINUTES_PER_HOUR = 60;

  private final Surgery surgery = new Surgery();
  private final Editors editors = new Editors(surgery);
  private final CrownMeasure before = new CrownMeasure();
  private final CrownMeasure after = new CrownMeasure();

  /**
   * Does a visit on a living tree; a dead one is left alone and gets no row.
   *
   * @param context the tree, with its random stream started for {@link #STREAM} and the month set
   * @param pricePerHour of the crew, currency
   * @param rows takes one row an operation
   */
  public void perform(
      Visit visit, YearContext context, double pricePerHour, Consumer<VisitRow> rows) {
    if (!context.state.vitality.alive) {
      return;
    }
    surgery.site.begin(context, visit.cuts());
    boolean first = true;
    for (Operation operation : visit.operations()) {
      rows.accept(perform(operation, visit, context, pricePerHour, first));
      first = false;
    }
  }

  private VisitRow perform(
      Operation operation, Visit visit, YearContext context, double pricePerHour, boolean first) {
    TreeState state = context.state;
    OperationTally tally = surgery.site.tally;
    before.take(state);
    surgery.site.beginOperation();
    editors.edit(operation);
    after.take(state);
    double dose = tally.dose();
    if (tally.changed) {
      remember(context, dose);
    }
    double hours =
        CrewTime.minutes(context.parameters.crew(), tally, before, first) / MINUTES_PER_HOUR;
    List<String> warnings =
        tally.changed
            ? PublishedLimits.warnings(operation, tally, before, after, state, context.parameters)
            : List.of();
    if (context.events.on()) {
      context.events.add(
          new TreeEvent.Pruned(state.year, operation.word(), dose, tally.largestCutM));
    }
    return new VisitRow(
        state.year,
        visit.season(),
        operation.word(),
        dose,
        tally.cuts,
        tally.largestCutM,
        tally.woundM2,
        hours,
        hours * pricePerHour,
        tally.cutsByClass.clone(),
        warnings);
  }

  /** 1 where the tree stands leafless, 0 where it is in leaf. */
  private static double leafless(YearContext context) {
    boolean bare = context.leafOn[context.month - 1] == 0;
    return bare && !context.parameters.species().evergreen() ? 1 : 0;
  }

  private static void remember(YearContext context, double dose) {
    context.light.stale = true;
    if (dose > 0) {
      Pools pools = context.state.pools;
      double recent = pools.recentDose;
      pools.leaflessShare =
          (recent * pools.leaflessShare + dose * leafless(context)) / (recent + dose);
      pools.recentDose = Math.min(1, 1 - (1 - recent) * (1 - dose));
    }
  }
}
