package longbough.model.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.parameter.ModelParameters;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Where;
import longbough.model.state.TreeState;
import longbough.model.surgery.OperationTally;
import org.junit.jupiter.api.Test;

/** The published limits L01-L07 and P23b of the table of checks: warned above, quiet below. */
class PublishedLimitsTest {

  private static List<String> thin(double dbhM, double share) {
    TreeState state = TestTrees.plain(dbhM, 6 + 20 * dbhM, 2, 30);
    return TestTrees.perform(
            state, TestTrees.COLLAR, new Operation.Thin(share, Where.EVENLY, CutKind.REMOVAL))
        .warnings();
  }

  private static void warns(List<String> warnings, String words) {
    assertThat(warnings).anySatisfy(w -> assertThat(w).contains(words));
  }

  private static void isQuiet(List<String> warnings, String words) {
    assertThat(warnings).noneSatisfy(w -> assertThat(w).contains(words));
  }

  /** L01: 0.25 in one growing season for a mature tree (ANSI A300 as quoted by Hagen). */
  @Test
  void aSeasonsDoseOnAMatureTree() {
    warns(
        thin(0.5, 0.26),
        "26 % of the live foliage went within twelve months; the ceiling for a mature tree is 25 %");
    isQuiet(thin(0.5, 0.24), "one growing season");
  }

  /** L02: mature 0.20, medium 0.25, young 0.33 at the upper ends (GardenNotes 616). */
  @Test
  void theDoseByStage() {
    warns(thin(0.5, 0.22), "guidance for a mature tree stops at 20 %");
    isQuiet(thin(0.5, 0.19), "within twelve months");
    warns(thin(0.3, 0.26), "guidance for a middle-aged tree stops at 25 %");
    isQuiet(thin(0.3, 0.24), "within twelve months");
    warns(thin(0.1, 0.34), "guidance for a young tree stops at 33 %");
    isQuiet(thin(0.1, 0.32), "within twelve months");
  }

  /** L02: old or stressed trees none. */
  @Test
  void aStressedTreeShouldLoseNone() {
    TreeState state = TestTrees.plain();
    state.pools.reserveKgC = 0.2 * state.pools.reserveCeilingKgC;
    warns(
        TestTrees.perform(
                state, TestTrees.COLLAR, new Operation.Thin(0.02, Where.EVENLY, CutKind.REMOVAL))
            .warnings(),
        "short of reserve (20 %");
    isQuiet(thin(0.4, 0.02), "short of reserve");
  }

  /**
   * L03: live crown of two thirds of the height; at most 0.15 of it raised at once (BS 3998:2010).
   */
  @Test
  void raising() {
    Operation high = new Operation.Raise(6, Double.NaN);
    Operation low = new Operation.Raise(3.5, Double.NaN);
    List<String> warnings = TestTrees.perform(TestTrees.plain(), TestTrees.COLLAR, high).warnings();
    warns(warnings, "guidance keeps two thirds");
    warns(warnings, "of the live crown's height at once; guidance stops at 15 %");
    warnings = TestTrees.perform(TestTrees.plain(), TestTrees.COLLAR, low).warnings();
    isQuiet(warnings, "two thirds");
    isQuiet(warnings, "at once");
  }

  /** L04: thinning 0.30 (UK guidance on BS 3998). */
  @Test
  void thinning() {
    warns(thin(0.1, 0.31), "Thinning took 31 % of the live foliage; guidance stops at 30 %");
    isQuiet(thin(0.1, 0.29), "Thinning took");
  }

  /** L05: final cut against its parent at most a third (BS 3998:2010). */
  @Test
  void theCutAgainstItsParent() {
    TreeState state = TestTrees.plain();
    double parent = 2 * state.trunk.radiusAtM(state.limbs.heightM[0]);
    Operation lowest = new Operation.Raise(3.1, Double.NaN);
    state.limbs.baseDiameterM[0] = 0.32 * parent;
    isQuiet(TestTrees.perform(state, TestTrees.COLLAR, lowest).warnings(), "as wide as the trunk");
    state = TestTrees.plain();
    state.limbs.baseDiameterM[0] = 0.35 * parent;
    warns(
        TestTrees.perform(state, TestTrees.COLLAR, lowest).warnings(),
        "35 % as wide as the trunk there");
  }

  /**
   * L07: largest cut 5 cm for weak and 10 cm for strong compartmentalizers (Dujesiefken and Stobbe
   * 2002).
   */
  @Test
  void theLargestCutByClass() {
    assertThat(largestCut("aesculus-hippocastanum", 0.049)).isEmpty();
    warns(largestCut("aesculus-hippocastanum", 0.055), "guidance stops at 5 cm");
    assertThat(largestCut("quercus-robur", 0.099)).isEmpty();
    warns(largestCut("quercus-robur", 0.103), "The largest cut is 10.3 cm wide");
    warns(largestCut("quercus-robur", 0.11), "The largest cut is 11 cm wide");
  }

  private static List<String> largestCut(String species, double diameterM) {
    OperationTally tally = new OperationTally();
    tally.count(1, diameterM, 0);
    return check(species, tally, 1.0);
  }

  /**
   * P23b: 60 cm trunk; 48 cuts of 5 cm within a third of its section, 4 of 20 cm over (BS
   * 3998:2010).
   */
  @Test
  void theSumOfCutAreas() {
    OperationTally small = new OperationTally();
    small.count(48, 0.05, 0);
    assertThat(check("quercus-robur", small, 0.60)).isEmpty();
    OperationTally large = new OperationTally();
    large.count(4, 0.20, 0);
    warns(
        check("quercus-robur", large, 0.60), "44 % of the trunk's section; guidance stops at 33 %");
  }

  private static List<String> check(String species, OperationTally tally, double dbhM) {
    ModelParameters parameters = TestTrees.parameters(species);
    TreeState state = TestTrees.plain(dbhM, 20, 3, 20);
    CrownMeasure measure = new CrownMeasure();
    measure.take(state);
    measure.dbhM = dbhM;
    return PublishedLimits.warnings(
        new Operation.RemoveDeadwood(0), tally, measure, measure, state, parameters);
  }

  /** P23a as a limit: 30 % of the volume is about 12 % of the radius (BS 3998:2010 as quoted). */
  @Test
  void reductionByVolume() {
    Operation modest = new Operation.Reduce(Double.NaN, 0.12, true);
    isQuiet(
        TestTrees.perform(TestTrees.plain(), TestTrees.COLLAR, modest).warnings(),
        "of the crown's volume");
    Operation deep = new Operation.Reduce(0.2, 0.25, true);
    warns(
        TestTrees.perform(TestTrees.plain(), TestTrees.COLLAR, deep).warnings(),
        "of the crown's volume; guidance stops near 30 % (about 12 % of the radius).");
  }
}
