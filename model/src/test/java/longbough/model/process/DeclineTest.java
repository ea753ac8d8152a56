package longbough.model.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import longbough.model.PlayedTrees;
import longbough.model.history.CarbonLedger;
import longbough.model.history.EventLog;
import longbough.model.parameter.ModelParameters;
import longbough.model.random.RandomStream;
import longbough.model.state.Vitality;
import longbough.model.tree.TreeReconstruction;
import longbough.shared.trait.SpeciesLibrary;
import org.junit.jupiter.api.Test;

/** Lasting stress: what a conifer and a broadleaf get rid of, and what both make good. */
class DeclineTest {
  private static final String BROADLEAF = "quercus-robur";
  private static final String CONIFER = "picea-abies";
  private static final double ILL = 0.5;
  private static final int YEARS = 30;

  @Test
  void aBroadleafWallsAnAilmentOffAndAConiferIsNotRidOfIt() {
    assertThat(after(BROADLEAF, ILL, 0, 1).ailment).isLessThan(ILL / 2);
    assertThat(after(CONIFER, ILL, 0, 1).ailment).isGreaterThan(ILL * 3 / 4);
  }

  @Test
  void withoutReserveNothingIsWalledOff() {
    assertThat(after(BROADLEAF, ILL, 0, 0).ailment).isEqualTo(ILL);
  }

  /** The ailment presses on in the conifer, when the broadleaf has made good most of its harm. */
  @Test
  void theConifersCrownStaysThinWhereTheBroadleafsComesBack() {
    double broadleaf = after(BROADLEAF, ILL, 0, 1).decline;
    double conifer = after(CONIFER, ILL, 0, 1).decline;
    assertThat(broadleaf).isLessThan(atMost(BROADLEAF) / 2);
    assertThat(conifer).isGreaterThan(atMost(CONIFER) * 0.9).isGreaterThan(broadleaf);
  }

  /** Needles that were eaten, roots that were cut: harm that nothing keeps open heals alike. */
  @Test
  void harmWithoutAnAilmentHealsAlike() {
    double healed = after(CONIFER, 0, 0.3, 1).decline;
    assertThat(healed).isLessThan(0.03);
    assertThat(after(BROADLEAF, 0, 0.3, 1).decline).isCloseTo(healed, within(1e-12));
  }

  /** The worst that the crown was in all those years. */
  private static double atMost(String species) {
    YearContext context = ill(species, ILL, 0);
    double worst = 0;
    for (int year = 1; year <= YEARS; year++) {
      run(context, year, 1);
      worst = Math.max(worst, context.state.vitality.decline);
    }
    return worst;
  }

  private static Vitality after(String species, double ailment, double decline, double reserve) {
    YearContext context = ill(species, ailment, decline);
    for (int year = 1; year <= YEARS; year++) {
      run(context, year, reserve);
    }
    return context.state.vitality;
  }

  private static YearContext ill(String species, double ailment, double decline) {
    ModelParameters p =
        ModelParameters.of(
            SpeciesLibrary.load().get(species),
            PlayedTrees.with(PlayedTrees.table(species), "decline.onset", 0));
    YearContext context =
        new YearContext(
            TreeReconstruction.build(PlayedTrees.tree(p.species(), 0.3, 1), p, 1),
            new CarbonLedger(),
            new EventLog(false),
            new RandomStream());
    context.parameters = p;
    context.state.vitality.ailment = ailment;
    context.state.vitality.decline = decline;
    return context;
  }

  private static void run(YearContext context, int year, double reserve) {
    context.worstWater = 1;
    context.autumnReserveFraction = reserve;
    context.random.start(1, 0, year, "decline");
    new Decline().run(context);
  }
}
