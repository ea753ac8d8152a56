package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;

/** A wound from before. */
public record WrittenWound(
    Given<Double> heightM,
    Given<Double> diameterCm,
    Given<Double> ageYears,
    Given<Double> bearingDeg,
    Given<Double> stillOpenCm) {}
