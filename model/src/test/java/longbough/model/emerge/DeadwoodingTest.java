package longbough.model.emerge;

import static longbough.model.history.YearColumn.GPP_KG_C;
import static longbough.model.history.YearColumn.GROWTH_KG_C;
import static longbough.model.history.YearColumn.RESERVE_KG_C;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.PlayedTrees;
import longbough.model.geometry.Allometry;
import longbough.model.history.History;
import longbough.model.history.VisitRow;
import longbough.model.history.YearColumn;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.pruning.Operation.Raise;
import longbough.model.pruning.Operation.RemoveDeadwood;
import longbough.model.pruning.Season;
import longbough.model.pruning.Visit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Taking dead wood off takes nothing that lives. */
class DeadwoodingTest {
  private static final int YEARS = 20;

  /**
   * A millionth: a tree that assimilates more also grows and respires more, so its reserve is not
   * the same to the bit.
   */
  private static final double NOTHING = 1e-6;

  /**
   * No harm to the carbon budget, future by future: common practice, no source. Two shade-bearing
   * conifers, since of free-standing trees they shed most.
   */
  @ParameterizedTest
  @ValueSource(strings = {"picea-abies", "abies-alba"})
  void neverHarmsTheCarbonBudget(String species) {
    Trials trials = trials(species);
    Outcome left = trials.alone();
    Outcome cleaned = trials.play(Trials.every(1, 3, YEARS, new RemoveDeadwood(0)));
    int removed = 0;
    for (int member = 0; member < left.futures().size(); member++) {
      History messy = left.futures().get(member);
      History clean = cleaned.futures().get(member);
      removed += clean.visits().stream().mapToInt(VisitRow::cuts).sum();
      assertThat(clean.visits()).allMatch(visit -> visit.foliageRemovedFraction() == 0);
      if (Outcome.alive(messy, YEARS) && Outcome.alive(clean, YEARS)) {
        for (YearColumn column : List.of(GPP_KG_C, GROWTH_KG_C)) {
          assertThat(Outcome.sum(clean, column, 1, YEARS))
              .as(species + " " + column)
              .isGreaterThanOrEqualTo(Outcome.sum(messy, column, 1, YEARS) * (1 - NOTHING));
        }
        assertThat(clean.value(RESERVE_KG_C, YEARS))
            .as(species)
            .isGreaterThanOrEqualTo(messy.value(RESERVE_KG_C, YEARS) * (1 - NOTHING));
      }
    }
    assertThat(removed).as("there was dead wood, " + species).isPositive();
    assertThat(cleaned.survival(YEARS)).as(species).isGreaterThanOrEqualTo(left.survival(YEARS));
  }

  /**
   * A stub holds the rim open; once it is off the wound closes: pruning guide texts, read; a dead
   * stub closes more slowly than a live cut: Niemisto P. et al. 2019. Silva Fennica 53(1):10052,
   * read, sign.
   */
  @ParameterizedTest
  @ValueSource(strings = {"acer-platanoides", "quercus-robur", "picea-abies"})
  void cleaningStubsSpeedsClosure(String species) {
    Trials trials = trials(species);
    Outcome left = trials.play(stubs(trials));
    Outcome cleaned = trials.play(List.of(stubs(trials), Trials.once(3, new RemoveDeadwood(0))));
    assertThat(closedYear(cleaned)).as(species).isLessThan(closedYear(left) - 0.5);
  }

  /** Mean year of closure; a wound still open counts as closed the year after the last. */
  private static double closedYear(Outcome outcome) {
    return outcome.meanOf(
        YEARS,
        h ->
            h.wounds().stream()
                .filter(wound -> wound.year() == 1)
                .mapToDouble(wound -> Math.min(YEARS + 1, wound.closedYear()))
                .average()
                .orElseThrow());
  }

  /** The lowest limbs cut to stubs in the first year. */
  private static Visit stubs(Trials trials) {
    SpeciesParameters s = trials.meanParameters().species();
    double clear = Allometry.heightM(s, trials.dbhM()) * (1 - s.crownRatioOpen() * 6 / 7);
    return Trials.once(1, Season.WINTER, Trials.STUB, new Raise(clear, Double.NaN));
  }

  private static Trials trials(String species) {
    return Trials.of(species, 0.4, PlayedTrees.MARITIME, YEARS, 40);
  }
}
