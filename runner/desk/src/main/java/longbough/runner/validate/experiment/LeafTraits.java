package longbough.runner.validate.experiment;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import longbough.model.parameter.ModelParameters;
import longbough.runner.validate.lab.Bench;
import longbough.runner.validate.lab.Lab;
import longbough.shared.trait.LeafType;
import longbough.shared.trait.SpeciesLibrary;

/**
 * F19 capacity, F20 dark respiration over it, F21 months in leaf: medians over the species library
 * of deciduous broadleaves and of needle trees. Capacities and ratios are read from the species
 * files; the months of a deciduous tree are those of its phenology in the mean year of two
 * climates.
 */
public final class LeafTraits implements Experiment {
  private static final double DBH_M = 0.4;
  private static final int MONTHS = 12;
  private static final String WHO =
      "Medians over the deciduous broadleaves and the needle trees of the library, as their files hold them";

  @Override
  public List<String> checks() {
    return List.of("F19", "F20", "F21");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] ratio = {
      median(LeafTraits::deciduous, s -> s.species().darkRespirationRatio()),
      median(LeafTraits::needle, s -> s.species().darkRespirationRatio())
    };
    Check f20 = checks.get("F20");
    return List.of(
        pair(
            "F19",
            median(LeafTraits::deciduous, s -> s.species().photosyntheticCapacityUmolM2S()),
            median(LeafTraits::needle, s -> s.species().photosyntheticCapacityUmolM2S()),
            "umol/m2/s",
            new double[] {5.0, 18.6, 3.6, 11.2},
            WHO + "."),
        new Finding(
            "F20",
            String.format(Locale.ROOT, "%.2f broadleaf, %.2f needle", ratio[0], ratio[1]),
            "0.06 to 0.22",
            f20.holds(ratio[0]) && f20.holds(ratio[1]),
            ratio[1] > ratio[0],
            WHO + ".",
            f20.readings(ratio)),
        pair(
            "F21",
            (leafMonths(Lab.MARITIME) + leafMonths(Lab.CONTINENTAL)) / 2,
            MONTHS * median(LeafTraits::needle, s -> s.species().leafLifeYears()),
            "months",
            new double[] {3.6, 8.3, 19, 97},
            "Deciduous: months in leaf by phenology in the mean year, median of the library, mean of a"
                + " maritime and a continental climate; needle: leaf life as the files hold it."));
  }

  private static Finding pair(
      String id, double deciduous, double needle, String unit, double[] band, String setUp) {
    boolean in =
        deciduous >= band[0] && deciduous <= band[1] && needle >= band[2] && needle <= band[3];
    return new Finding(
        id,
        String.format(Locale.ROOT, "%.1f deciduous, %.1f needle %s", deciduous, needle, unit),
        String.format(
            Locale.ROOT, "%.1f to %.1f and %.1f to %.1f", band[0], band[1], band[2], band[3]),
        in,
        in,
        setUp,
        List.of(new Reading(deciduous, band[0], band[1]), new Reading(needle, band[2], band[3])));
  }

  private static double leafMonths(longbough.model.parameter.Climate climate) {
    return median(
        SpeciesLibrary.load().ids().stream()
            .filter(LeafTraits::deciduous)
            .map(id -> Lab.of(id, DBH_M, climate, 1, 1))
            .mapToDouble(lab -> Arrays.stream(Bench.inLeaf(lab).context.leafOn).sum()));
  }

  private static double median(Predicate<String> which, ToDoubleFunction<ModelParameters> trait) {
    return median(
        SpeciesLibrary.load().ids().stream()
            .filter(which)
            .map(id -> Lab.of(id, DBH_M, Lab.MARITIME, 1, 1).meanParameters())
            .mapToDouble(trait));
  }

  private static double median(java.util.stream.DoubleStream values) {
    double[] sorted = values.sorted().toArray();
    int n = sorted.length;
    return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }

  static boolean deciduous(String id) {
    var traits = SpeciesLibrary.load().get(id);
    return !traits.evergreen() && traits.leafType() == LeafType.BROADLEAF;
  }

  static boolean needle(String id) {
    var traits = SpeciesLibrary.load().get(id);
    return traits.evergreen() && traits.leafType() == LeafType.NEEDLE;
  }
}
