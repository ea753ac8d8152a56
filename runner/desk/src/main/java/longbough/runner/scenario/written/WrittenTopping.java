package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;

/** An earlier topping: where, how long ago, and the largest cut if somebody measured it. */
public record WrittenTopping(
    Given<Double> heightM, Given<Double> yearsAgo, Given<Double> cutDiameterCm) {}
