package longbough.runner.client;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Season;
import longbough.model.pruning.TriggerMeasure;
import longbough.model.pruning.Where;
import longbough.model.state.CauseOfDeath;
import longbough.runner.assumption.AssumptionTrial;
import longbough.runner.client.words.Amounts;
import longbough.runner.client.words.Messages;
import longbough.runner.compare.Metric;
import longbough.shared.problem.InputException;
import longbough.shared.problem.Problem;
import longbough.shared.source.Basis;
import longbough.shared.trait.CompartmentClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MessagesTest {
  /**
   * A key as it stands in the code: at least two words joined by dots, or one of the short ones.
   */
  private static final Pattern KEY = Pattern.compile("\"([a-z]+(?:[._][a-z0-9_]+)*)\"");

  @TempDir Path place;

  @Test
  void everyKeyIsThereAndNoneIsUnused() throws IOException {
    Set<String> used = new TreeSet<>(made());
    Set<String> known = Messages.english().keys();
    for (String text : sources()) {
      Matcher literal = KEY.matcher(text);
      while (literal.find()) {
        if (known.contains(literal.group(1))) {
          used.add(literal.group(1));
        }
      }
    }
    assertThat(new TreeSet<>(known)).isEqualTo(used);
  }

  @Test
  void everyKeyThatIsAskedForIsThere() throws IOException {
    Set<String> known = Messages.english().keys();
    Pattern asked = Pattern.compile("say\\(\\s*\"([a-z0-9_.]+)\"\\s*[,)]");
    int found = 0;
    for (String text : sources()) {
      Matcher call = asked.matcher(text);
      while (call.find()) {
        found++;
        assertThat(known).contains(call.group(1));
      }
    }
    assertThat(found).isGreaterThan(80);
    assertThat(known).containsAll(made());
  }

  @Test
  void aFileTakesThePlaceOfSomeSentencesAndLeavesTheOthers() throws IOException {
    Path file =
        Files.writeString(
            place.resolve("de.properties"),
            "# Deutsch\n\nseason.winter = Winter\nunit.years = {0,choice,0#{1} Jahre|1#{1} Jahr|1<{1} Jahre}\n"
                + "quoted = „{0}“\n");
    Messages words = Messages.in(file);
    assertThat(words.say("season.winter")).isEqualTo("Winter");
    assertThat(words.say("season.summer")).isEqualTo("summer");
    assertThat(new Amounts(words, "EUR").years(1)).isEqualTo("1 Jahr");
    assertThat(new Amounts(words, "EUR").years(12)).isEqualTo("12 Jahre");
  }

  @Test
  void everyMistakeInAFileIsToldWithItsLine() throws IOException {
    Path file =
        Files.writeString(
            place.resolve("bad.properties"),
            """
            seasn.winter = x
            season.winter
            season.summer = {
            quoted = {0} {1}
            season.spring = a
            season.spring = b
            quoted = {99999999}
            unit.years = {0,date}
            season.autumn =
            clause.end = {0,choice,0#a|1#b}
            list.last = {0,choice,0#a|1#b}
            """);
    List<Problem> problems =
        catchThrowableOfType(InputException.class, () -> Messages.in(file)).problems();
    assertThat(problems).extracting(Problem::line).containsExactly(1, 2, 3, 4, 6, 7, 8, 9, 10, 11);
    assertThat(problems.get(0).mend()).contains("did you mean 'season.winter'");
    assertThat(problems).allSatisfy(problem -> assertThat(problem.mend()).isNotBlank());
  }

  @Test
  void amountsAreRoundedAsAClientWantsThem() {
    Amounts amounts = new Amounts(Messages.english(), "EUR");
    assertThat(amounts.about(81.44)).isEqualTo("81");
    assertThat(amounts.about(8.33)).isEqualTo("8.3");
    assertThat(amounts.about(9.96)).isEqualTo("10");
    assertThat(amounts.about(0)).isEqualTo("0");
    assertThat(amounts.about(Double.NaN)).isEqualTo("–");
    assertThat(amounts.money(1294.6)).isEqualTo("1\u00a0295\u00a0EUR");
    assertThat(amounts.difference(Metric.STRENGTH_LOSS_FRACTION_END, -0.109))
        .isEqualTo("11\u00a0points");
    assertThat(amounts.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    assertThat(amounts.futures(0)).isEqualTo("0\u00a0futures");
  }

  /** Keys that are put together from the constants of the model. */
  private static Set<String> made() {
    Set<String> keys = new TreeSet<>();
    add(keys, "season.", Season.values());
    add(keys, "cause.", CauseOfDeath.values());
    add(keys, "basis.", Basis.values());
    add(keys, "measure.", TriggerMeasure.values());
    add(keys, "where.", Where.values());
    add(keys, "decay_class.", CompartmentClass.values());
    for (Class<?> operation : Operation.class.getPermittedSubclasses()) {
      String word = operation.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "_").toLowerCase();
      keys.add("done." + word);
      keys.add("plan." + word);
    }
    for (Metric metric : asked()) {
      keys.add("question." + Amounts.key(metric));
    }
    for (Metric metric : questions()) {
      keys.add("gain." + Amounts.key(metric));
      keys.add("loss." + Amounts.key(metric));
    }
    for (Metric metric : figures()) {
      keys.add("figure." + Amounts.key(metric));
    }
    for (String chart : List.of("leaf", "strength", "cost")) {
      keys.add("chart." + chart);
    }
    return keys;
  }

  private static List<Metric> questions() {
    return List.of(
        Metric.YEARS_ALIVE,
        Metric.LEAF_AREA_MEAN_M2,
        Metric.SPROUT_COUNT_HIGHEST,
        Metric.STRENGTH_LOSS_FRACTION_END,
        Metric.COST_DISCOUNTED);
  }

  private static Set<Metric> asked() {
    Set<Metric> all = new TreeSet<>(questions());
    all.addAll(AssumptionTrial.METRICS);
    return all;
  }

  private static List<Metric> figures() {
    return List.of(
        Metric.ALIVE_AT_END,
        Metric.LEAF_AREA_MEAN_M2,
        Metric.RESERVE_FRACTION_LOWEST,
        Metric.SPROUT_COUNT_HIGHEST,
        Metric.STRENGTH_LOSS_FRACTION_END,
        Metric.CREW_HOURS,
        Metric.COST_DISCOUNTED);
  }

  private static void add(Set<String> keys, String start, Enum<?>... constants) {
    Arrays.stream(constants).forEach(constant -> keys.add(start + Amounts.key(constant)));
  }

  private static List<String> sources() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/longbough/runner/client"))) {
      List<Path> java = files.filter(file -> file.toString().endsWith(".java")).toList();
      assertThat(java).hasSizeGreaterThan(20);
      List<String> texts = new java.util.ArrayList<>();
      for (Path file : java) {
        texts.add(Files.readString(file));
      }
      return texts;
    }
  }
}
