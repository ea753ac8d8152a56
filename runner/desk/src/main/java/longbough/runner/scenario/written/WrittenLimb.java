package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;

/** One limb of an inventory. */
public record WrittenLimb(
    Given<Double> heightM,
    Given<Double> diameterCm,
    Given<Double> lengthM,
    Given<Double> bearingDeg,
    Given<Double> angleDeg,
    Given<Boolean> dead) {}
