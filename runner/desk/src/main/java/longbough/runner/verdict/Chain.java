package longbough.runner.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
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

  /** The years that tell most, at most so many, in their order; death is always among them. */
  public static List<Link> telling(List<TreeEvent> events, int most) {
    return of(tellingEvents(events, most));
  }

  /** The events of the years that tell most, in their order. */
  public static List<TreeEvent> tellingEvents(List<TreeEvent> events, int most) {
    Map<Integer, Integer> weights = new TreeMap<>();
    List<TreeEvent> kept = new ArrayList<>();
    List<TreeEvent> ordered = new ArrayList<>(events);
    ordered.sort(Comparator.comparingInt(TreeEvent::year));
    Weight weight = new Weight(ordered);
    for (TreeEvent event : ordered) {
      int weighs = weight.of(event);
      if (weighs > 0) {
        kept.add(event);
        weights.merge(event.year(), weighs, Math::max);
      }
    }
    Set<Integer> years =
        weights.entrySet().stream()
            .sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed())
            .limit(most)
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet());
    return kept.stream().filter(event -> years.contains(event.year())).toList();
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
