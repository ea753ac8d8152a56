package longbough.runner.scenario.written;

import java.util.List;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.Place;

/** What the client wants. */
public record WrittenWishes(
    String path,
    Place place,
    Given<String> firstIdea,
    Given<Long> byYear,
    Given<Long> untilYear,
    List<WrittenWish> asked) {}
