package longbough.model;

import longbough.model.history.TreeEvent;
import longbough.model.process.YearContext;

/** Tells when the reserve becomes low and when it has recovered, and names drought years. */
final class ReserveWatch {
  private boolean low;

  void look(YearContext context) {
    if (!context.events.on()) {
      return;
    }
    int year = context.state.year;
    if (context.worstWater < context.parameters.weather().droughtEvent()) {
      context.events.add(new TreeEvent.Drought(year, context.worstWater));
    }
    double fraction = context.autumnReserveFraction;
    double limit = context.parameters.reserve().low();
    if (!low && fraction < limit) {
      low = true;
      context.events.add(new TreeEvent.ReserveLow(year, fraction));
    } else if (low && fraction > (1 + limit) / 2) {
      low = false;
      context.events.add(new TreeEvent.ReserveRecovered(year, fraction));
    }
  }
}
