package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;
import longbough.runner.yaml.Level;

/** The place where the tree stands. */
public record WrittenSite(
    Given<Level> openness,
    Given<Level> soilWaterMm,
    Given<Level> windExposure,
    Given<Level> growthFactor) {}
