package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longbough.model.pruning.Placement;
import longbough.model.state.Sections;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * The barrier zone as a hard bound, in ten thousand random histories of cuts, growth and hunger:
 * Shigo A.L. 1983. Tree defects: a photo guide. USDA Forest Service GTR NE-82 (wound check D01).
 */
class BarrierZoneProperties {
  private static final int YEARS = 20;

  record Cut(int year, Placement placement, double diameterM, double heightM, double azimuthRad) {}

  record Life(String species, List<Cut> cuts, double[] ringsM, double reserve) {}

  @Provide
  Arbitrary<Life> lives() {
    Arbitrary<Cut> cut =
        Combinators.combine(
                Arbitraries.integers().between(0, YEARS - 1),
                Arbitraries.of(Placement.class),
                Arbitraries.doubles().between(0.01, 0.30).ofScale(3),
                Arbitraries.doubles().between(0.2, 10),
                Arbitraries.doubles().between(0, 6.28))
            .as(Cut::new);
    return Combinators.combine(
            Arbitraries.of(TestTrunks.WEAK, TestTrunks.STRONG, TestTrunks.SPRUCE, "quercus-robur"),
            cut.list().ofMinSize(1).ofMaxSize(6),
            Arbitraries.doubles().between(0, 0.01).ofScale(4).array(double[].class).ofSize(YEARS),
            Arbitraries.doubles().between(0, 1))
        .as(Life::new);
  }

  @Property(tries = 10_000, seed = "20260101")
  void noColumnPassesTheTrunkOfTheYearOfWounding(@ForAll("lives") Life life) {
    YearContext context = TestTrunks.of(life.species());
    TreeState state = context.state;
    TestTrunks.reserve(state, life.reserve());
    double[] bound = new double[life.cuts().size()];
    for (int year = 0; year < YEARS; year++) {
      for (Cut cut : life.cuts()) {
        if (cut.year() == year) {
          bound[state.wounds.count] = open(context, cut);
        }
      }
      TestTrunks.years(context, 1, life.ringsM()[year]);
    }
    Wounds wounds = state.wounds;
    double widest = 0;
    for (int w = 0; w < wounds.count; w++) {
      assertThat(wounds.columnDepthM[w]).isBetween(0.0, bound[w]);
      assertThat(wounds.columnHalfWidthM[w]).isLessThanOrEqualTo(Math.PI * bound[w] * (1 + 1e-12));
      widest = Math.max(widest, bound[w]);
    }
    for (int i = 0; i < state.trunk.stations * Sections.SECTORS; i++) {
      assertThat(state.sections.holes.outermostM(i)).isLessThanOrEqualTo(widest + 1e-12);
    }
  }

  private static double open(YearContext context, Cut cut) {
    int w = TestTrunks.cut(context, cut.placement(), cut.diameterM());
    Wounds wounds = context.state.wounds;
    wounds.heightM[w] = cut.heightM();
    wounds.azimuthRad[w] = cut.azimuthRad();
    wounds.heartwood[w] = cut.diameterM() > 0.1;
    wounds.parentRadiusM[w] = context.state.trunk.radiusAtM(cut.heightM());
    return wounds.parentRadiusM[w];
  }
}
