package longbough.runner.cuts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import longbough.model.pruning.Placement;
import longbough.shared.trait.SpeciesLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of the table of cuts in every species of the library. */
class CutTableTest {
  private static final double TRUNK_M = 0.4;
  private static final double RING_M = 0.003;
  private static final int YEARS = 20;

  static Stream<String> species() {
    return SpeciesLibrary.load().ids().stream();
  }

  // Shigo A.L., picture guide to pruning wounds (wound check D15): flush far worse inside; stubs
  // between, common practice; Dujesiefken D., Stobbe H. 2002. UFUG 1:75-82: worse with size.
  @ParameterizedTest
  @MethodSource("species")
  void flushIsWorstCollarLeastAndAllGrowWithSize(String species) {
    CutTrial[] smaller = new CutTrial[CutTable.PLACEMENTS.size()];
    for (double diameter : CutTable.DIAMETERS_M) {
      CutTrial gentler = null;
      for (int p = 0; p < smaller.length; p++) {
        CutTrial trial =
            CutTrial.play(species, CutTable.PLACEMENTS.get(p), diameter, TRUNK_M, RING_M, YEARS);
        assertThat(trial.depthM()).isLessThanOrEqualTo(trial.boundM());
        assertThat(Math.PI * trial.sectionShare()).isLessThanOrEqualTo(Math.PI);
        if (gentler != null) {
          atLeast(trial, gentler);
        }
        if (smaller[p] != null) {
          atLeast(trial, smaller[p]);
        }
        gentler = trial;
        smaller[p] = trial;
      }
    }
  }

  private static void atLeast(CutTrial worse, CutTrial milder) {
    String cut = worse + " against " + milder;
    double grain = 1e-9;
    assertThat(worse.depthM()).as(cut).isGreaterThanOrEqualTo(milder.depthM() - grain);
    // A collar cut's face is 5 % wider than the stub's: up to a tenth of a per cent of the section.
    assertThat(worse.sectionShare()).as(cut).isGreaterThanOrEqualTo(milder.sectionShare() - 1e-3);
    if (worse.sectionShare() == 0) {
      // Both walled off in the branch core: their columns differ by their faces alone.
      return;
    }
    assertThat(worse.columnUpM()).as(cut).isGreaterThanOrEqualTo(milder.columnUpM() - grain);
    assertThat(worse.columnDownM()).as(cut).isGreaterThanOrEqualTo(milder.columnDownM() - grain);
  }

  @Test
  void weakSpeciesFareWorseThanStrongOnes() {
    for (double diameter : CutTable.DIAMETERS_M) {
      CutTrial weak =
          CutTrial.play(
              "aesculus-hippocastanum", Placement.FLUSH, diameter, TRUNK_M, RING_M, YEARS);
      CutTrial strong =
          CutTrial.play("carpinus-betulus", Placement.FLUSH, diameter, TRUNK_M, RING_M, YEARS);
      assertThat(weak.columnDownM()).isGreaterThan(strong.columnDownM());
      assertThat(weak.sectionShare()).isGreaterThan(strong.sectionShare());
    }
  }

  @Test
  void closingStopsWhileTheTreeGrowsNoWood() {
    CutTrial starved = CutTrial.play("carpinus-betulus", Placement.COLLAR, 0.03, TRUNK_M, 0, YEARS);
    assertThat(starved.closedYears()).isNaN();
  }

  @Test
  void tableAndCsvHoldEveryCut() {
    CutTable table = CutTable.of(List.of("betula-pendula", "tilia-cordata"), TRUNK_M, RING_M, 5);
    assertThat(table.trials()).hasSize(2 * 4 * 3);
    assertThat(table.lines()).filteredOn(line -> line.contains("flush")).hasSize(8);
    String[] rows = table.csv().split("\n");
    assertThat(rows).hasSize(1 + 24);
    int cells = rows[0].split(",").length;
    assertThat(rows).allMatch(row -> row.split(",", -1).length == cells);
  }
}
