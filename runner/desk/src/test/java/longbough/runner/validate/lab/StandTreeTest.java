package longbough.runner.validate.lab;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.ToDoubleFunction;
import longbough.model.geometry.Allometry;
import longbough.model.history.YearColumn;
import longbough.model.parameter.Climate;
import longbough.model.parameter.ModelParameters;
import longbough.model.process.CrownLight;
import longbough.model.process.LightField;
import longbough.model.state.CrownFrame;
import longbough.model.state.TreeState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Trees that their neighbours wall in, left alone: a closed stand keeps its leaf, and its crowns
 * move up with their tops.
 */
class StandTreeTest {
  private static final int YEARS = 30;
  private static final int FUTURES = 16;
  private static final double WALLED_IN = 0;
  private static final int RECEDING = 10;

  /** Years in which the crown has settled among its neighbours, and those twenty years later. */
  private static final List<Integer> EARLY = List.of(4, 5, 6, 7, 8);

  private static final List<Integer> LATE = List.of(26, 27, 28, 29, 30);

  /**
   * Leaf area over a crown's own shadow: hardwood stands 4.3 to 5.4 (Vose J.M. et al. 1995, read);
   * quartiles of 158 planted Scots pines 4.2 and 9.6, of 166 planted Norway spruces 3.9 and 7.7, of
   * 50 Douglas-firs of forests 6.2 and 18 (computed from baad-trees.csv, Falster D.S. et al. 2015,
   * by the leaf mass per area of the species files). Together 3.5 to 9.6, Douglas-firs up to 18.
   * That stands keep it once they have closed is from memory; a third more or less in twenty years
   * is our width. The base is asked to follow the top from year 10 on, since shaded limbs of a
   * tolerant species take so long to die; that it does so about as fast is from memory, the bound
   * is ours.
   */
  @ParameterizedTest
  @CsvSource({
    "pseudotsuga-menziesii, 0.15, maritime, true, 18",
    "pinus-sylvestris, 0.2, maritime, false, 9.6",
    "pinus-banksiana, 0.2, continental, false, 9.6",
    "picea-abies, 0.25, continental, false, 9.6",
    "quercus-rubra, 0.35, continental, false, 9.6",
    "acer-saccharum, 0.3, continental, false, 9.6",
    "fagus-sylvatica, 0.3, maritime, false, 9.6"
  })
  void keepsItsLeafAndMovesItsCrownUp(
      String species, double dbhM, String climate, boolean young, double most) {
    Lab lab = lab(species, dbhM, climate, young);
    ModelParameters p = lab.meanParameters();
    Played alone = lab.alone(allYears());
    for (int year = 1; year <= YEARS; year++) {
      assertThat(leafIndex(alone, p, year)).as(species + ", year " + year).isBetween(3.5, most);
    }
    double kept = mean(alone, p, LATE) / mean(alone, p, EARLY);
    assertThat(kept).as("leaf area index kept, " + species).isBetween(0.75, 1.33);
    double top = rise(alone, TreeState::heightM);
    double base = rise(alone, TreeState::crownBaseM);
    assertThat(base / top).as("rise of the base over the top's, " + species).isGreaterThan(0.4);
    // Tenth and ninetieth percentiles of trees of forests and plantations (baad-trees.csv).
    assertThat(alone.mean(YearColumn.LIVE_CROWN_RATIO, YEARS))
        .as("live crown ratio, " + species)
        .isBetween(0.31, 0.84);
  }

  /**
   * The leaf in the top quarter of the crown's depth, asked of conifers, whose needles come one
   * cohort a year. The bound is ours: half of the tenth that the top quarter holds in crowns of
   * stands (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "pseudotsuga-menziesii, 0.15, maritime, true",
    "picea-abies, 0.25, continental, false",
    "pinus-sylvestris, 0.2, maritime, false"
  })
  void keepsItsTopFilled(String species, double dbhM, String climate, boolean young) {
    Lab lab = lab(species, dbhM, climate, young);
    ModelParameters p = lab.meanParameters();
    Played alone = lab.alone(allYears());
    for (int year = 5; year <= YEARS; year += 3) {
      assertThat(alone.meanState(year, state -> topShare(state, p)))
          .as(species + ", year " + year)
          .isGreaterThan(0.05);
    }
  }

  /**
   * What a crew takes from below leaves the crown's form as it was; what shade takes moves it up.
   */
  @Test
  void theOutlineFollowsTheShadeAndNotTheSaw() {
    Lab lab = lab("pseudotsuga-menziesii", 0.15, "maritime", true);
    double start = lab.start().frame.crownBaseM;
    double height = lab.start().trunk.heightM;
    Played raised = lab.play(Lab.once(1, Raising.crown(lab, 0.5)), 1, YEARS);
    assertThat(raised.meanState(1, TreeState::crownBaseM)).isGreaterThan(start + 2);
    assertThat(raised.meanState(1, state -> state.frame.crownBaseM)).isEqualTo(start);
    Played alone = lab.alone(YEARS);
    double base = alone.meanState(YEARS, state -> state.frame.crownBaseM);
    double top = alone.meanState(YEARS, state -> state.trunk.heightM);
    assertThat(base).isGreaterThan(start + 2);
    assertThat(top - base).as("length of the outline").isGreaterThanOrEqualTo(height - start);
  }

  private static Lab lab(String species, double dbhM, String climate, boolean young) {
    Climate where = climate.equals("maritime") ? Lab.MARITIME : Lab.CONTINENTAL;
    StandForm form = young ? StandForm.YOUNG_CONIFER.growing(1.0) : StandForm.FOREST;
    return Lab.of(species, dbhM, where, YEARS, FUTURES).crowded(WALLED_IN).shaped(form);
  }

  private static Integer[] allYears() {
    Integer[] years = new Integer[YEARS];
    for (int i = 0; i < YEARS; i++) {
      years[i] = i + 1;
    }
    return years;
  }

  private static double mean(Played alone, ModelParameters p, List<Integer> years) {
    return years.stream().mapToDouble(year -> leafIndex(alone, p, year)).average().orElseThrow();
  }

  private static double leafIndex(Played alone, ModelParameters p, int year) {
    return alone.meanOf(
        year, h -> h.value(YearColumn.LEAF_AREA_M2, year) / shadowM2(h.snapshots().get(year), p));
  }

  /** Ground under the crown by its reach were it uncut. */
  private static double shadowM2(TreeState state, ModelParameters p) {
    double spread = 0;
    for (double factor : state.frame.spreadFactor) {
      spread += factor / CrownFrame.SECTORS;
    }
    double diameter = spread * Allometry.crownDiameterM(p.species(), state.trunk.statureM());
    return Math.PI / 4 * diameter * diameter;
  }

  private static double rise(Played alone, ToDoubleFunction<TreeState> height) {
    return alone.meanState(YEARS, height) - alone.meanState(RECEDING, height);
  }

  private static double topShare(TreeState state, ModelParameters p) {
    CrownLight light = new CrownLight();
    new LightField().compute(state, light, p, WALLED_IN);
    double top = 0;
    double all = 0;
    for (int cell = 0; cell < CrownLight.CELLS; cell++) {
      double leaf = light.leafAreaM2[cell];
      all += leaf;
      top += cell / CrownLight.RINGS >= CrownLight.LAYERS * 3 / 4 ? leaf : 0;
    }
    return top / all;
  }
}
