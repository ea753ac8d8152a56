package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;

/** The last pruning before today and the share of the live foliage that it took. */
public record WrittenPruning(Given<Double> yearsAgo, Given<Double> foliageRemoved) {}
