package longbough.model.process;

import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SiteYear;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;

/** What a process is given: the tree, the parameters, this year's drivers, and where to book. */
public final class YearContext {
  public final TreeState state;
  public final CarbonLedger ledger;
  public final EventLog events;
  public final RandomStream random;
  public final CrownLight light = new CrownLight();
  public final WindLoad wind = new WindLoad();
  public final SiteYear site = new SiteYear();
  public ModelParameters parameters;

  /** Month at hand, 1 being the month of midwinter. */
  public int month;

  /** Assimilation and maintenance booked in the month at hand, kg C. */
  public double monthNetKgC;

  public YearContext(TreeState state, CarbonLedger ledger, EventLog events, RandomStream random) {
    this.state = state;
    this.ledger = ledger;
    this.events = events;
    this.random = random;
  }
}
