package longbough.model;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longbough.model.process.Process;
import longbough.model.process.StatePart;
import longbough.model.process.Weather;
import longbough.model.process.YearContext;

/**
 * A yearly cycle whose every process is watched: the watcher runs it in its place, at its moment of
 * the year and on the real state. Only the weather keeps its own class, so it is watched by itself.
 */
final class WatchedCycle {

  /** Runs a process in its place. */
  interface Watcher {
    void run(Process process, YearContext context);
  }

  private final Map<Process, Process> watched = new IdentityHashMap<>();

  private WatchedCycle() {}

  /** Puts the watcher around every process of a cycle; returns the processes. */
  static Set<Process> watch(YearlyCycle cycle, Watcher watcher) {
    WatchedCycle all = new WatchedCycle();
    try {
      for (Field field : YearlyCycle.class.getDeclaredFields()) {
        field.setAccessible(true);
        if (field.getType() == Process.class) {
          field.set(cycle, all.wrap((Process) field.get(cycle), watcher));
        } else if (field.getType() == List.class) {
          List<Process> wrapped = new ArrayList<>();
          for (Object one : (List<?>) field.get(cycle)) {
            wrapped.add(all.wrap((Process) one, watcher));
          }
          field.set(cycle, wrapped);
        } else if (field.getType() == Weather.class) {
          all.watched.put((Weather) field.get(cycle), null);
        }
      }
    } catch (IllegalAccessException refused) {
      throw new IllegalStateException(refused);
    }
    return all.watched.keySet();
  }

  private Process wrap(Process process, Watcher watcher) {
    return watched.computeIfAbsent(process, inner -> new Watched(inner, watcher));
  }

  private record Watched(Process inner, Watcher watcher) implements Process {
    @Override
    public String name() {
      return inner.name();
    }

    @Override
    public List<String> sources() {
      return inner.sources();
    }

    @Override
    public Set<StatePart> owns() {
      return inner.owns();
    }

    @Override
    public void run(YearContext context) {
      watcher.run(inner, context);
    }
  }
}
