package longbough.runner.scenario.written;

import longbough.runner.yaml.Given;
import longbough.runner.yaml.Place;

/** The measure that brings the crew out, and the value above or below which it does. */
public record WrittenTrigger(
    String path, Place place, Given<String> measure, Given<Double> above, Given<Double> below) {}
