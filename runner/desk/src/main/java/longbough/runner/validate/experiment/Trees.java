package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import longbough.model.process.CrownLight;
import longbough.model.process.LightField;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;

/** Species that stand in for a published group, and measures of a tree taken off its state. */
final class Trees {
  static final List<String> DECIDUOUS =
      List.of("acer-platanoides", "quercus-rubra", "tilia-cordata", "fraxinus-pennsylvanica");
  static final List<String> CONIFERS =
      List.of("picea-pungens", "pinus-strobus", "pseudotsuga-menziesii");

  private Trees() {}

  /** Each species played. */
  static List<Played> play(List<String> species, Function<String, Played> play) {
    return species.stream().map(play).toList();
  }

  /** Mean over the species of a measure of each. */
  static double mean(List<Played> all, ToDoubleFunction<Played> measure) {
    return all.stream().mapToDouble(measure).average().orElseThrow();
  }

  /** Share of all futures of all species that live to the end of a year. */
  static double survival(List<Played> all, int year) {
    return mean(all, p -> p.survival(year));
  }

  /** Dry leaf mass per leaf area, mean over the crown of the tree at the start, kg/m2. */
  static double leafMassPerAreaKgM2(Lab lab) {
    TreeState start = lab.start();
    CrownLight light = new CrownLight();
    new LightField().compute(start, light, lab.meanParameters(), 1);
    return lab.meanParameters().species().leafMassPerAreaKgM2() * light.meanCapacityShare();
  }

  /** Numbers as words, e.g. {@code 13.1 / 6.9 / 160}. */
  static String say(int decimals, double... values) {
    StringBuilder text = new StringBuilder();
    for (double value : values) {
      text.append(text.isEmpty() ? "" : " / ");
      text.append(String.format(Locale.ROOT, "%." + decimals + "f", value));
    }
    return text.toString();
  }
}
