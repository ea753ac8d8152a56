package longbough.runner.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import longbough.model.SimulationInput;
import longbough.model.history.History;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Operation;
import longbough.model.pruning.Regime;
import longbough.model.pruning.Season;
import longbough.model.pruning.Timing;
import longbough.model.pruning.Visit;
import longbough.model.pruning.Where;
import longbough.runner.compare.Player;

/**
 * Thins one tree once, in the first winter, evenly, by whole branches cut at the collar, in doses
 * from nothing up, and plays each dose in each case through the same futures.
 */
public final class DoseTrial {
  private static final CutMix COLLAR = new CutMix(1, 0, 0);

  private DoseTrial() {}

  /**
   * The table of one tree.
   *
   * @param input whose tree, place, years, futures and seed are taken; its regimes are not
   * @param doses shares of the live foliage above 0, rising
   * @param progress told how many histories are done
   */
  public static DoseTable play(
      SimulationInput input, List<Double> doses, Player player, int threads, IntConsumer progress)
      throws InterruptedException {
    List<Double> all = new ArrayList<>(List.of(0.0));
    all.addAll(doses);
    List<Regime> regimes = all.stream().map(DoseTrial::regime).toList();
    SimulationInput asked = input.playing(regimes, input.years(), input.members(), input.seed());
    List<DoseCell> cells = new ArrayList<>();
    for (DryCase dry : DryCase.values()) {
      int before = dry.ordinal() * all.size() * asked.members();
      List<History[]> histories =
          player.playAll(
              asked.with(dry.dryYears()), threads, done -> progress.accept(before + done));
      IntStream.range(0, all.size())
          .mapToObj(
              dose ->
                  DoseCell.of(
                      all.get(dose), dry, histories.get(dose), histories.get(0), asked.years()))
          .forEach(cells::add);
    }
    return new DoseTable(asked, all, cells);
  }

  private static Regime regime(double dose) {
    if (dose == 0) {
      return new Regime("left alone", "", List.of());
    }
    Operation thin = new Operation.Thin(dose, Where.EVENLY, CutKind.REMOVAL);
    Visit visit = new Visit(new Timing.Once(1), Season.WINTER, List.of(thin), COLLAR);
    return new Regime("thinned " + dose, "", List.of(visit));
  }
}
