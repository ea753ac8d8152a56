package longbough.model.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.TreeState;

/**
 * What became of one tree under one regime in one future: one row a year (year 0 is the tree as
 * measured), visits, wounds, and on request events and copies of the state at chosen years.
 */
public final class History {
  private static final int COLUMNS = YearColumn.values().length;

  private final int years;
  private final double[] values;
  private final List<VisitRow> visits = new ArrayList<>();
  private List<WoundRow> wounds = List.of();
  private List<TreeEvent> events = List.of();
  private final Map<Integer, TreeState> snapshots = new TreeMap<>();
  private CauseOfDeath cause = CauseOfDeath.NONE;
  private int deathYear = Integer.MAX_VALUE;

  public History(int years) {
    this.years = years;
    this.values = new double[(years + 1) * COLUMNS];
  }

  /** Number of simulated years; rows run from 0 to this. */
  public int years() {
    return years;
  }

  public double value(YearColumn column, int year) {
    return values[year * COLUMNS + column.ordinal()];
  }

  public void set(YearColumn column, int year, double value) {
    values[year * COLUMNS + column.ordinal()] = value;
  }

  public List<VisitRow> visits() {
    return visits;
  }

  public void add(VisitRow row) {
    visits.add(row);
  }

  public List<WoundRow> wounds() {
    return wounds;
  }

  public void wounds(List<WoundRow> rows) {
    wounds = List.copyOf(rows);
  }

  public List<TreeEvent> events() {
    return events;
  }

  public void events(List<TreeEvent> all) {
    events = List.copyOf(all);
  }

  /** Copies of the state by year, only those that were asked for. */
  public Map<Integer, TreeState> snapshots() {
    return snapshots;
  }

  public CauseOfDeath cause() {
    return cause;
  }

  /** Simulation year of death, or {@link Integer#MAX_VALUE}. */
  public int deathYear() {
    return deathYear;
  }

  public void death(int year, CauseOfDeath why) {
    deathYear = year;
    cause = why;
  }
}
