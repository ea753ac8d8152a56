package longbough.runner.compare;

import java.util.List;
import longbough.model.SimulationInput;

/**
 * One tree under several regimes over the same futures.
 *
 * @param input what was asked for, every default filled in
 * @param regimes results in the order of the input; the first is the reference of every difference
 * @param medianMember index of the future whose events and drawings are shown
 * @param wallSeconds time the simulation took; goes to the manifest and nowhere else
 */
public record Comparison(
    SimulationInput input, List<RegimeResult> regimes, int medianMember, double wallSeconds) {

  public Comparison {
    regimes = List.copyOf(regimes);
    if (regimes.isEmpty()) {
      throw new IllegalArgumentException("a comparison needs at least one regime");
    }
    for (RegimeResult result : regimes) {
      if (result.members().length != regimes.get(0).members().length) {
        throw new IllegalArgumentException("every regime needs the same futures");
      }
    }
  }

  public RegimeResult reference() {
    return regimes.get(0);
  }

  public int years() {
    return input.years();
  }

  public int members() {
    return reference().members().length;
  }
}
