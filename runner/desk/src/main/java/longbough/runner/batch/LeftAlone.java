package longbough.runner.batch;

import java.util.ArrayList;
import java.util.List;
import longbough.model.SimulationInput;
import longbough.model.pruning.Regime;

/** Puts a regime without visits first, the scenario's own where it has one. */
final class LeftAlone {
  private static final String NAME = "left alone";

  private LeftAlone() {}

  static SimulationInput first(SimulationInput input) {
    List<Regime> regimes = new ArrayList<>(input.regimes());
    Regime alone =
        regimes.stream()
            .filter(regime -> regime.visits().isEmpty())
            .findFirst()
            .orElse(new Regime(free(regimes), "Nobody cuts anything.", List.of()));
    regimes.remove(alone);
    regimes.add(0, alone);
    return input.playing(regimes, input.years(), input.members(), input.seed());
  }

  private static String free(List<Regime> regimes) {
    boolean taken = regimes.stream().anyMatch(regime -> regime.name().equals(NAME));
    return taken ? NAME + " (no visits)" : NAME;
  }
}
