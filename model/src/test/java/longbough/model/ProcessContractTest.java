package longbough.model;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Constructor;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.history.Flow;
import longbough.model.history.History;
import longbough.model.parameter.Climate;
import longbough.model.parameter.Site;
import longbough.model.process.Process;
import longbough.model.process.StatePart;
import longbough.model.process.Weather;
import longbough.model.process.YearContext;
import longbough.model.pruning.Regime;
import longbough.model.random.RandomStream;
import longbough.model.state.TreeState;
import longbough.shared.source.Bibliography;
import longbough.shared.trait.SpeciesLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What every process must keep, watched on played trees at the very moment at which the yearly
 * cycle runs it: same input, same output to the bit (from a used and from a new instance); numbers
 * stay finite; only owned parts of the state change; the change of carbon is what was booked;
 * sources are on file.
 *
 * <p>A dead tree: the cycle is never run for one. Within a year only wind (second last) and
 * survival (last) can kill, so that survival alone can meet a tree that died before it; the
 * processes of wounds, decay and strength leave the dead alone besides.
 */
class ProcessContractTest {
  /** Rounding of a sum of some thousand numbers, relative to the tree's carbon. */
  private static final double CLOSES = 1e-12;

  private static final int YEARS = 9;
  private static final int MOST_MEMBERS = 9;

  /** Parts that each process was seen to write. */
  private final Map<String, Set<StatePart>> written = new TreeMap<>();

  private Climate climate;

  @ParameterizedTest
  @CsvSource({
    "tilia-cordata, 0.35, 0.9, MARITIME, HARSH", "picea-abies, 0.30, 0.7, CONTINENTAL, HARSH",
    "quercus-robur, 0.50, 0.5, SOUTHERN, 7", "quercus-ilex, 0.25, 0.9, MARITIME, 11",
    "betula-pendula, 0.12, 0.3, CONTINENTAL, 5"
  })
  void everyProcessKeepsTheContract(
      String species, double dbhM, double condition, String where, String how) {
    climate =
        where.equals("MARITIME")
            ? PlayedTrees.MARITIME
            : where.equals("SOUTHERN") ? PlayedTrees.SOUTHERN : PlayedTrees.CONTINENTAL;
    Regime regime = how.equals("HARSH") ? Regimes.HARSH : Regimes.random(Long.parseLong(how));
    SimulationInput input =
        PlayedTrees.input(
            SpeciesLibrary.load().get(species),
            PlayedTrees.worn(
                PlayedTrees.tree(PlayedTrees.parameters(species).species(), dbhM, condition)),
            climate,
            List.of(regime),
            YEARS,
            1);
    Set<Process> all = Set.of();
    int played = 0;
    for (int member = 0; played < YEARS && member < MOST_MEMBERS; member++) {
      YearlyCycle cycle =
          new YearlyCycle(
              climate, PlayedTrees.OPEN, new PruningCrew(80).begin(regime, new History(YEARS)));
      all = WatchedCycle.watch(cycle, this::check);
      played += play(cycle, context(input, species), input.seed(), member);
    }
    assertThat(played).as("years played").isGreaterThanOrEqualTo(YEARS);
    assertThat(classes(all)).as("the cycle runs every process there is").isEqualTo(onClasspath());
    owned(all);
  }

  /** Plays one future until the tree dies; returns the years it lived. */
  private int play(YearlyCycle cycle, YearContext context, long seed, int member) {
    cycle.measure(context);
    int year = 0;
    while (year < YEARS && context.state.vitality.alive) {
      year++;
      context.state.year = year;
      weather(context, seed, member);
      cycle.run(context, seed, member);
    }
    return year;
  }

  private void owned(Set<Process> all) {
    written.forEach(
        (name, parts) -> {
          Process process =
              all.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
          assertThat(process.owns())
              .as(name + " writes; the table of ownership is\n" + ownership(all))
              .containsAll(parts);
        });
  }

  private static YearContext context(SimulationInput input, String species) {
    YearContext context =
        new YearContext(
            new Simulation(input).startingTree(),
            new CarbonLedger(),
            new EventLog(true),
            new RandomStream());
    context.parameters = PlayedTrees.parameters(species);
    return context;
  }

  private void weather(YearContext context, long seed, int member) {
    Process weather = new Weather(climate, PlayedTrees.OPEN);
    context.random.start(seed, member, context.state.year, weather.name());
    check(weather, context);
  }

  private void check(Process process, YearContext context) {
    String when = process.name() + " in year " + context.state.year + ", month " + context.month;
    YearContext before = copy(context);
    YearContext again = copy(context);
    process.run(again);
    YearContext fresh = copy(context);
    fresh(process.getClass()).run(fresh);
    process.run(context);
    same(when + ", run again", context, again);
    same(when + ", by a new instance", context, fresh);
    assertThat(StateParts.notFinite(context.state)).as(when).isEmpty();
    assertThat(StateParts.notFinite(context.light)).as(when).isEmpty();
    assertThat(StateParts.notFinite(context.site)).as(when).isEmpty();
    assertThat(StateParts.notFinite(context.wind)).as(when).isEmpty();
    ledger(when, before, context);
    if (!PlainData.same(before.state, context.state)) {
      Set<StatePart> parts = StateParts.changed(before.state, context.state);
      written
          .computeIfAbsent(process.name(), name -> EnumSet.noneOf(StatePart.class))
          .addAll(parts);
      Set<StatePart> foreign = EnumSet.copyOf(parts);
      foreign.removeAll(process.owns());
      assertThat(StateParts.changedFields(before.state, context.state, foreign))
          .as(when + " owns " + process.owns() + " but wrote")
          .isEmpty();
    }
  }

  private static void same(String when, YearContext one, YearContext two) {
    if (!PlainData.same(one, two)) {
      assertThat(PlainData.differences(one, two)).as(when).isEmpty();
    }
  }

  private static void ledger(String when, YearContext before, YearContext after) {
    double total = before.state.totalKgC();
    double expected = total;
    for (Flow flow : Flow.values()) {
      double booked = after.ledger.amountKgC(flow) - before.ledger.amountKgC(flow);
      assertThat(booked).as(when + ": " + flow).isNotNegative();
      expected += flow.sign() * booked;
    }
    assertThat(Math.abs(after.state.totalKgC() - expected))
        .as(when + ": carbon")
        .isLessThanOrEqualTo(CLOSES * total);
  }

  private static YearContext copy(YearContext from) {
    YearContext to =
        new YearContext(
            new TreeState(),
            new CarbonLedger(),
            new EventLog(from.events.on()),
            new RandomStream());
    PlainData.copy(from, to);
    from.events.events().forEach(to.events::add);
    return to;
  }

  private Process fresh(Class<?> type) {
    try {
      for (Constructor<?> constructor : type.getConstructors()) {
        Object[] given = new Object[constructor.getParameterCount()];
        for (int i = 0; i < given.length; i++) {
          Class<?> wanted = constructor.getParameterTypes()[i];
          given[i] =
              wanted == Site.class ? PlayedTrees.OPEN : wanted == Climate.class ? climate : null;
        }
        return (Process) constructor.newInstance(given);
      }
      throw new IllegalStateException(type + " has no public constructor");
    } catch (ReflectiveOperationException failed) {
      throw new IllegalStateException(failed);
    }
  }

  private static Set<String> onClasspath() {
    return new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("longbough.model")
            .stream()
            .filter(type -> type.isAssignableTo(Process.class) && !type.isInterface())
            .map(JavaClass::getSimpleName)
            .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> classes(Set<Process> all) {
    return all.stream()
        .map(p -> p.getClass().getSimpleName())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Who owns what, part by part. */
  private static String ownership(Set<Process> all) {
    StringBuilder table = new StringBuilder();
    for (StatePart part : StatePart.values()) {
      List<String> owners =
          all.stream().filter(p -> p.owns().contains(part)).map(Process::name).sorted().toList();
      table.append(part).append(": ").append(String.join(", ", owners)).append('\n');
    }
    return table.toString();
  }

  @Test
  void everyPartOfTheStateHasAnOwnerAndEveryFieldAPart() {
    Set<Process> all =
        WatchedCycle.watch(
            new YearlyCycle(PlayedTrees.MARITIME, PlayedTrees.OPEN, context -> false),
            Process::run);
    for (StatePart part : StatePart.values()) {
      assertThat(all)
          .as(part + "\n" + ownership(all))
          .anyMatch(process -> process.owns().contains(part));
    }
    PlainData.walk(
        "",
        new TreeState(),
        (name, value) -> {
          if (!name.equals("year") && !name.startsWith("frame.")) {
            assertThat(StateParts.of(name)).as(name).isNotNull();
          }
        });
  }

  @Test
  void everyProcessHasAPlainNameAndSourcesOnFile() {
    Set<Process> all =
        WatchedCycle.watch(
            new YearlyCycle(PlayedTrees.MARITIME, PlayedTrees.OPEN, context -> false),
            Process::run);
    Set<String> names = new TreeSet<>();
    for (Process process : all) {
      assertThat(process.name()).matches("[a-z ]+");
      assertThat(names.add(process.name()))
          .as("one random stream a process: " + process.name())
          .isTrue();
      assertThat(process.sources()).as(process.name()).allMatch(Bibliography.load()::has);
    }
  }

  @Test
  void theWatcherNoticesASingleBit() {
    TreeState one = new TreeState();
    TreeState two = new TreeState();
    assertThat(StateParts.changed(one, two)).isEmpty();
    two.limbs.leafKgC[4] = -0.0;
    two.pools.reserveKgC = Double.MIN_VALUE;
    assertThat(StateParts.changed(one, two))
        .containsExactlyInAnyOrder(StatePart.FOLIAGE, StatePart.RESERVE);
  }
}
