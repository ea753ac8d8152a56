package longbough.model.history;

import java.util.ArrayList;
import java.util.List;

/** Collects events where somebody wants them; switched off in the mass of futures for speed. */
public final class EventLog {
  private final boolean on;
  private final List<TreeEvent> events = new ArrayList<>();

  public EventLog(boolean on) {
    this.on = on;
  }

  /** Whether events are kept; check before building one. */
  public boolean on() {
    return on;
  }

  public void add(TreeEvent event) {
    if (on) {
      events.add(event);
    }
  }

  public List<TreeEvent> events() {
    return List.copyOf(events);
  }
}
