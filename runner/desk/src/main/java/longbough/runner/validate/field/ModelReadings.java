package longbough.runner.validate.field;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longbough.runner.validate.ValidationRow;
import longbough.runner.validate.experiment.Reading;

/** What the model gave in the published checks, so that nothing is played twice. */
record ModelReadings(Map<String, List<Reading>> byCheck) {

  static ModelReadings of(List<ValidationRow> rows) {
    return new ModelReadings(
        rows.stream()
            .filter(row -> row.finding() != null)
            .collect(Collectors.toMap(row -> row.check().id(), row -> row.finding().readings())));
  }

  /** A check's reading of that index; NaN where it was not played or has none. */
  double get(String check, int index) {
    List<Reading> readings = byCheck.getOrDefault(check, List.of());
    return index < readings.size() ? readings.get(index).got() : Double.NaN;
  }
}
