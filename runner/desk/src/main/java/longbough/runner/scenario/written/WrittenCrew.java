package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;

/** What the crew costs and how well it cuts. */
public record WrittenCrew(
    Given<Double> pricePerHour,
    Given<String> currency,
    Given<Double> discountRate,
    Given<String> skill) {}
