package longbough.model;

import longbough.model.history.History;
import longbough.model.process.YearContext;
import longbough.model.pruning.Regime;
import longbough.model.visit.VisitCalendar;
import longbough.model.visit.VisitRunner;

/**
 * Brings the visits of a regime to the tree when they fall due; sent to a new tree by {@link
 * #begin}.
 */
final class PruningCrew implements YearlyCycle.Crew {
  private final VisitRunner runner = new VisitRunner();
  private final double pricePerHour;
  private VisitCalendar calendar;
  private History history;
  private int found;

  PruningCrew(double pricePerHour) {
    this.pricePerHour = pricePerHour;
  }

  /** A new future: the regime to follow and the history that takes the visits. */
  PruningCrew begin(Regime regime, History history) {
    this.calendar = new VisitCalendar(regime);
    this.history = history;
    return this;
  }

  @Override
  public boolean due(YearContext context) {
    double woodCarbon = context.parameters.carbon().woodCarbon();
    found = calendar.findDue(context.state.year, context.month, context.state, woodCarbon);
    return found > 0;
  }

  @Override
  public void visit(YearContext context) {
    for (int visit = 0; visit < found; visit++) {
      runner.perform(calendar.due(visit), context, pricePerHour, history::add);
    }
  }
}
