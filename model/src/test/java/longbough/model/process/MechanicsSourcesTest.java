package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import longbough.shared.source.Bibliography;
import longbough.shared.source.ParameterLibrary;
import longbough.shared.source.Sourced;
import org.junit.jupiter.api.Test;

class MechanicsSourcesTest {
  private static final List<Process> ALL =
      List.of(
          new WoundClosure(),
          new Compartmentalization(),
          new TrunkSections(),
          new TrunkStrength(),
          new WindLoading(),
          new TrunkResistance(),
          new LimbResistance(),
          new FailureProbability(),
          new WindFailure());

  @Test
  void everyProcessNamesASourceOnFile() {
    Set<String> names = new HashSet<>();
    for (Process process : ALL) {
      assertThat(names.add(process.name())).as(process.name()).isTrue();
      assertThat(process.sources()).isNotEmpty();
      assertThat(process.sources()).allMatch(Bibliography.load()::has);
    }
  }

  @Test
  void everyCitedParameterIsOnFile() {
    for (Sourced row : ParameterLibrary.general().rows()) {
      if (row.name().matches("(wound|decay|strength)\\..*") && !row.citation().isEmpty()) {
        assertThat(Bibliography.load().has(row.citation()))
            .as(row.name() + " " + row.citation())
            .isTrue();
      }
    }
  }

  @Test
  void aDeadTreeIsLeftAlone() {
    YearContext context = TestTrunks.of(TestTrunks.WEAK);
    TestTrunks.limbs(context.state);
    int w = TestTrunks.cut(context, longbough.model.pruning.Placement.FLUSH, 0.1);
    context.state.vitality.alive = false;
    context.site.gustMs = 190;
    double carbon = context.state.totalKgC();
    double open = context.state.wounds.openWidthM[w];
    ALL.forEach(process -> process.run(context));
    assertThat(context.state.totalKgC()).isEqualTo(carbon);
    assertThat(context.state.wounds.openWidthM[w]).isEqualTo(open);
    assertThat(context.state.wounds.columnDownM[w]).isZero();
    assertThat(context.state.sections.decayed).doesNotContain(true);
    assertThat(context.state.wounds.count).isEqualTo(1);
  }
}
