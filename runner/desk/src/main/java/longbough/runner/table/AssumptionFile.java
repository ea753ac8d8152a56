package longbough.runner.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.runner.assumption.Assumption;
import longbough.runner.assumption.Assumptions;
import longbough.runner.assumption.Shift;
import longbough.shared.source.Sourced;

/**
 * {@code assumptions.csv}: one row a parameter, the heaviest first; {@code shifts.csv}: one row for
 * each parameter, measure and pair of regimes.
 */
public final class AssumptionFile {
  public static final String FILE = "assumptions.csv";
  public static final String SHIFTS = "shifts.csv";

  private static final List<String> COLUMNS =
      List.of(
          "rank",
          "parameter",
          "group",
          "value",
          "unit",
          "low",
          "high",
          "basis",
          "source",
          "flag",
          "effect",
          "metric",
          "preferred",
          "against",
          "turns_verdict",
          "futures",
          "failure");

  private static final List<String> SHIFT_COLUMNS =
      List.of(
          "parameter",
          "metric",
          "preferred",
          "against",
          "unit",
          "gain_as_is",
          "gain_low_end",
          "gain_high_end",
          "change",
          "standard_error",
          "chance",
          "effect",
          "beyond_chance",
          "turns_at_low",
          "turns_at_high");

  private AssumptionFile() {}

  public static void write(Assumptions all, Path folder) throws IOException {
    List<Assumption> flagged = all.flagged();
    try (TidyFile file = new TidyFile(folder.resolve(FILE), COLUMNS)) {
      int rank = 0;
      for (Assumption one : all.ranked()) {
        Sourced row = one.parameter();
        Shift strongest = one.strongest();
        file.add(++rank).add(row.name()).add(one.group()).add(row.value()).add(row.unit());
        file.add(row.range().low()).add(row.range().high());
        file.add(row.basis().label()).add(row.citation());
        file.add(flagged.contains(one) ? row.basis().label() : "");
        file.add(one.weight());
        if (strongest == null) {
          file.empty().empty().empty();
        } else {
          file.add(strongest.metric().word());
          file.add(name(all.input(), strongest.best())).add(name(all.input(), strongest.other()));
        }
        file.add(one.turns().isEmpty() ? 0 : 1).add(one.futures()).add(one.failure()).endRow();
      }
    }
    try (TidyFile file = new TidyFile(folder.resolve(SHIFTS), SHIFT_COLUMNS)) {
      for (Assumption one : all.ranked()) {
        for (Shift shift : one.shifts()) {
          file.add(one.parameter().name()).add(shift.metric().word());
          file.add(name(all.input(), shift.best())).add(name(all.input(), shift.other()));
          file.add(unit(all.input(), shift));
          file.add(shift.base()).add(shift.low()).add(shift.high()).add(shift.change());
          file.add(shift.standardError()).add(shift.chance()).add(shift.effect());
          file.add(shift.beyondChance() ? 1 : 0);
          file.add(shift.turnsAtLow() ? 1 : 0).add(shift.turnsAtHigh() ? 1 : 0).endRow();
        }
      }
    }
  }

  /** Of gains, change and standard error; money in the scenario's currency. */
  private static String unit(SimulationInput input, Shift shift) {
    String unit = shift.metric().unit();
    return unit.isEmpty() ? input.crew().currency() : unit;
  }

  private static String name(SimulationInput input, int regime) {
    return input.regimes().get(regime).name();
  }
}
