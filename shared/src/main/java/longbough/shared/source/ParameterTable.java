package longbough.shared.source;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** An immutable, ordered set of parameters by name: what the model reads and a sweep turns. */
public final class ParameterTable {

  private final Map<String, Sourced> byName;

  private ParameterTable(Map<String, Sourced> byName) {
    this.byName = byName;
  }

  /** A table of the given rows, in their order; a later row replaces an earlier one of its name. */
  public static ParameterTable of(Collection<Sourced> rows) {
    Map<String, Sourced> map = new LinkedHashMap<>();
    for (Sourced row : rows) {
      map.put(row.name(), row);
    }
    return new ParameterTable(map);
  }

  public Collection<Sourced> rows() {
    return java.util.Collections.unmodifiableCollection(byName.values());
  }

  public boolean has(String name) {
    return byName.containsKey(name);
  }

  /** The parameter of that name; refuses an unknown name, which is a mistake in our own data. */
  public Sourced get(String name) {
    Sourced row = byName.get(name);
    if (row == null) {
      throw new IllegalArgumentException(
          "no parameter named '" + name + "' in the parameter files");
    }
    return row;
  }

  public double value(String name) {
    return get(name).value();
  }

  /** This table with every row of the other added or replaced. */
  public ParameterTable with(ParameterTable other) {
    Map<String, Sourced> map = new LinkedHashMap<>(byName);
    map.putAll(other.byName);
    return new ParameterTable(map);
  }

  /** This table with one value changed. */
  public ParameterTable with(String name, double value) {
    Map<String, Sourced> map = new LinkedHashMap<>(byName);
    map.put(name, get(name).withValue(value));
    return new ParameterTable(map);
  }
}
