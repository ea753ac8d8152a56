package longbough.runner.scenario.written;

import java.util.List;
import java.util.Optional;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Place;

/** One visit, or a rule that repeats it. */
public record WrittenVisit(
    String path,
    Place place,
    Given<Long> year,
    Given<Long> everyYears,
    Optional<WrittenTrigger> when,
    Given<Long> fromYear,
    Given<Long> untilYear,
    Given<Long> gapYears,
    Given<String> season,
    WrittenCuts cuts,
    List<WrittenOperation> operations) {}
