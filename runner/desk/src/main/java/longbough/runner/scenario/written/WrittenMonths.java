package longbough.runner.scenario.written;

import java.util.List;
import longbough.runner.yaml.Given;

/** Twelve months of the author's own, January to December. */
public record WrittenMonths(
    Given<String> name,
    Given<String> source,
    Given<Double> latitudeDeg,
    Given<List<Double>> temperatureC,
    Given<List<Double>> rainMm,
    Given<List<Double>> radiationMjM2Day,
    Given<Double> gustTenYearMs,
    Given<Double> gustFiftyYearMs) {}
