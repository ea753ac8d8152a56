package longbough.model.emerge;

import static longbough.model.history.YearColumn.HEIGHT_M;
import static org.assertj.core.api.Assertions.assertThat;

import longbough.model.PlayedTrees;
import longbough.model.geometry.Allometry;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.pruning.Operation.Raise;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A young tree that loses the lower half of its crown. */
class RaisedYoungTreeTest {
  private static final double DBH_M = 0.08;

  /**
   * Diameter growth falls, height growth doesn't: Kupka I. 2007. J. For. Sci. 53:555-560, doi
   * 10.17221/2165-JFS (wild cherry, half of the crown left, five years). The bounds are ours: the
   * pace of a young tree whose rings still widen lags a little behind its twin.
   */
  @ParameterizedTest
  @ValueSource(strings = {"prunus-avium", "acer-platanoides", "tilia-cordata"})
  void growsInHeightAsBefore(String species) {
    Trials trials = Trials.of(species, DBH_M, PlayedTrees.MARITIME, 9, 20);
    SpeciesParameters s = trials.meanParameters().species();
    double height = Allometry.heightM(s, DBH_M);
    double base = height * (1 - s.crownRatioOpen());
    Outcome alone = trials.alone();
    Outcome raised = trials.play(Trials.once(5, new Raise((base + height) / 2, Double.NaN)));
    assertThat(raised.growthCm(4, 9)).as(species).isLessThan(0.9 * alone.growthCm(4, 9));
    double gain = alone.mean(HEIGHT_M, 9) - alone.mean(HEIGHT_M, 4);
    assertThat(raised.mean(HEIGHT_M, 9) - raised.mean(HEIGHT_M, 4))
        .as(species)
        .isBetween(0.9 * gain, 1.1 * gain);
  }
}
