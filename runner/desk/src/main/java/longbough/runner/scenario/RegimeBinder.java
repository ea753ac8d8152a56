package longbough.runner.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import longbough.runner.scenario.written.WrittenCuts;
import longbough.runner.scenario.written.WrittenOperation;
import longbough.runner.scenario.written.WrittenRegime;
import longbough.runner.scenario.written.WrittenTrigger;
import longbough.runner.scenario.written.WrittenVisit;
import longbough.runner.yaml.Fields;
import longbough.runner.yaml.Given;
import longbough.runner.yaml.KeyRow;

/** One regime with its visits and their operations. */
final class RegimeBinder {

  private RegimeBinder() {}

  static WrittenRegime bind(Fields regime) {
    List<WrittenVisit> visits =
        regime.maps("visits", "visit").stream().map(RegimeBinder::visit).toList();
    return new WrittenRegime(regime.text("name"), regime.text("description"), visits);
  }

  private static WrittenVisit visit(Fields visit) {
    return new WrittenVisit(
        visit.path(),
        visit.place(),
        visit.whole("year"),
        visit.whole("every_years"),
        visit.map("when", "when").map(RegimeBinder::trigger),
        visit.whole("from_year"),
        visit.whole("until_year"),
        visit.whole("gap_years"),
        visit.word("season"),
        cuts(visit),
        visit.maps("operations", "operation", "operation").stream()
            .flatMap(RegimeBinder::operation)
            .toList());
  }

  private static WrittenTrigger trigger(Fields when) {
    return new WrittenTrigger(
        when.path(),
        when.place(),
        when.word("measure"),
        when.number("above"),
        when.number("below"));
  }

  private static WrittenCuts cuts(Fields visit) {
    Optional<Fields> shares = visit.holdsMap("cuts") ? visit.map("cuts", "cuts") : Optional.empty();
    Fields block = shares.orElse(visit.none("cuts", "cuts"));
    if (block.blank()) {
      block.mistake(
          "an empty block",
          "shares of collar, flush and stub",
          "give the shares, or remove 'cuts'");
    }
    Given<String> skill =
        shares.isPresent() ? Given.absent(block.path(), block.place()) : visit.word("cuts");
    return new WrittenCuts(
        block.path(),
        block.place(),
        skill,
        block.number("collar"),
        block.number("flush"),
        block.number("stub"));
  }

  private static Stream<WrittenOperation> operation(Fields item) {
    return SingleKey.of(item, "operation").stream()
        .map(word -> operation(word, item.map(word, word).orElseThrow()));
  }

  private static WrittenOperation operation(String word, Fields keys) {
    Map<String, Given<Double>> numbers = new LinkedHashMap<>();
    Map<String, Given<String>> words = new LinkedHashMap<>();
    for (KeyRow row : keys.rows()) {
      if (row.kinds().contains("number")) {
        numbers.put(row.key(), keys.number(row.key()));
      } else {
        words.put(row.key(), keys.word(row.key()));
      }
    }
    return new WrittenOperation(word, keys.path(), keys.place(), numbers, words);
  }
}
