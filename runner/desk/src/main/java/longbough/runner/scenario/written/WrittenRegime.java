package longbough.runner.scenario.written;

import java.util.List;
import longbough.runner.yaml.Given;

/** One way to treat the tree. */
public record WrittenRegime(
    Given<String> name, Given<String> description, List<WrittenVisit> visits) {}
