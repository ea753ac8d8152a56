package longbough.runner.verdict;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longbough.model.history.TreeEvent;

/**
 * The dated chain of events of one future. Many of a kind in one year (dead limbs, closed wounds)
 * become one phrase with their number.
 */
public final class Chain {

  /** What happened in one year. */
  public record Link(int year, List<String> phrases) {

    /** The year and its events as one line. */
    public String text() {
      return "year " + year + ": " + String.join("; ", phrases);
    }
  }

  private Chain() {}

  /** Every year in which something happened. */
  public static List<Link> of(List<TreeEvent> events) {
    Map<Integer, List<TreeEvent>> byYear = new TreeMap<>();
    for (TreeEvent event : events) {
      byYear.computeIfAbsent(event.year(), year -> new ArrayList<>()).add(event);
    }
    List<Link> links = new ArrayList<>();
    byYear.forEach((year, all) -> links.add(new Link(year, phrases(all))));
    return links;
  }

  /** The years that decide, at most so many, for a short account; the end is always among them. */
  public static List<Link> telling(List<TreeEvent> events, int most) {
    List<Link> links = of(events.stream().filter(Chain::telling).toList());
    if (links.size() <= most) {
      return links;
    }
    List<Link> kept = new ArrayList<>(links.subList(0, most - 1));
    kept.add(links.get(links.size() - 1));
    return kept;
  }

  private static boolean telling(TreeEvent event) {
    return !(event instanceof TreeEvent.WoundClosed
        || event instanceof TreeEvent.LimbDied
        || event instanceof TreeEvent.Frosted
        || event instanceof TreeEvent.ReserveRecovered);
  }

  private static List<String> phrases(List<TreeEvent> events) {
    Map<Class<?>, List<TreeEvent>> byKind = new LinkedHashMap<>();
    for (TreeEvent event : events) {
      byKind.computeIfAbsent(event.getClass(), kind -> new ArrayList<>()).add(event);
    }
    List<String> phrases = new ArrayList<>();
    for (List<TreeEvent> kind : byKind.values()) {
      String many = many(kind);
      if (many != null) {
        phrases.add(many);
      } else {
        kind.forEach(event -> phrases.add(EventWords.of(event)));
      }
    }
    return phrases;
  }

  /** One phrase for several of a kind, or null where each is worth its own. */
  private static String many(List<TreeEvent> kind) {
    int count = kind.size();
    if (count < 2) {
      return null;
    }
    TreeEvent first = kind.get(0);
    if (first instanceof TreeEvent.LimbDied) {
      return count + " limbs died";
    } else if (first instanceof TreeEvent.WoundClosed) {
      return count + " wounds closed";
    } else if (first instanceof TreeEvent.LimbBroken) {
      return "wind broke " + count + " limbs";
    } else if (first instanceof TreeEvent.Sprouted) {
      double sum = kind.stream().mapToDouble(event -> ((TreeEvent.Sprouted) event).count()).sum();
      return Math.round(sum) + " new sprouts";
    }
    return null;
  }
}
