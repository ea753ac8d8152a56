package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;

/** A known cavity or decay column of the trunk. */
public record WrittenCavity(
    Given<Double> heightM,
    Given<Double> lengthM,
    Given<Double> soundWallCm,
    Given<Double> bearingDeg,
    Given<Double> openingCm) {}
