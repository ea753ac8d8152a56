package longbough.runner.assumption;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longbough.model.SimulationInput;
import longbough.runner.compare.Metric;

/**
 * Every parameter that has a range, the one the verdict leans on most first.
 *
 * @param input what was compared
 * @param preferred for each measure the regime that is best as things stand, and by how much
 * @param ranked by weight, then by name
 */
public record Assumptions(
    SimulationInput input, List<Preference> preferred, List<Assumption> ranked) {
  /** How many of the first are looked at for their basis. */
  public static final int LOOKED_AT = 10;

  /** Effect from which a parameter counts as moving the verdict; our own choice. */
  public static final double MOVES = 0.1;

  public Assumptions {
    preferred = List.copyOf(preferred);
    Comparator<Assumption> order =
        Comparator.comparingDouble((Assumption one) -> one.weight())
            .reversed()
            .thenComparing(assumption -> assumption.parameter().name());
    ranked = ranked.stream().sorted(order).toList();
  }

  /** The first few, those without any effect left out. */
  public List<Assumption> first(int most) {
    return ranked.stream().filter(assumption -> assumption.weight() > 0).limit(most).toList();
  }

  /** The first few by one measure, those without any effect on it left out. */
  public List<Assumption> first(Metric metric, int most) {
    Comparator<Assumption> order = Comparator.comparingDouble(one -> -one.weight(metric));
    return ranked.stream().filter(one -> one.weight(metric) > 0).sorted(order).limit(most).toList();
  }

  /** Those among the ten heaviest that no published source stands behind. */
  public List<Assumption> flagged() {
    return first(LOOKED_AT).stream().filter(Assumption::unpublished).toList();
  }

  /** Those within whose range another regime is preferred by some measure. */
  public List<Assumption> turning() {
    return ranked.stream().filter(assumption -> !assumption.turns().isEmpty()).toList();
  }

  /** Those that could not be played at an end of their range. */
  public List<Assumption> failed() {
    return ranked.stream().filter(assumption -> !assumption.failure().isEmpty()).toList();
  }

  /** How many were played through all futures, since they might have moved something. */
  public long playedThrough() {
    return ranked.stream().filter(one -> one.futures() == input.members()).count();
  }

  /** The groups, the one with the heaviest parameter first. */
  public List<Group> groups() {
    Map<String, List<Assumption>> byGroup = new LinkedHashMap<>();
    ranked.forEach(one -> byGroup.computeIfAbsent(one.group(), name -> new ArrayList<>()).add(one));
    List<Group> groups = new ArrayList<>();
    byGroup.forEach((name, members) -> groups.add(new Group(name, members)));
    return groups;
  }

  /**
   * A group of parameters.
   *
   * @param name as before the dot of their names
   * @param members the heaviest first
   */
  public record Group(String name, List<Assumption> members) {

    /** How many move the verdict by at least {@link #MOVES}. */
    public long moving() {
      return members.stream().filter(member -> member.weight() >= MOVES).count();
    }

    /** How many of those no published source stands behind. */
    public long movingUnpublished() {
      return members.stream()
          .filter(member -> member.weight() >= MOVES && member.unpublished())
          .count();
    }

    public Assumption heaviest() {
      return members.get(0);
    }
  }
}
