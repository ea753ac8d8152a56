package longbough.runner.scenario.written;

import java.util.Optional;
import longbough.runner.yaml.Given;

/** Either the name of a climate that comes along, or twelve months of the author's own. */
public record WrittenClimate(Given<String> preset, Optional<WrittenMonths> own) {}
