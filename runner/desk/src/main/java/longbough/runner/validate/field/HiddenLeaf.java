package longbough.runner.validate.field;

import java.util.List;
import java.util.stream.IntStream;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.model.tree.MeasuredTree;
import longbough.model.tree.TreeReconstruction;
import longbough.runner.validate.lab.GeneralNumbers;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;

/**
 * Measured trees of a species rebuilt from trunk, height and crown width with the leaf area hidden,
 * against the leaf area on file. The crown base is not on file and taken as usual for the species.
 *
 * @param n trees
 * @param r2 share of the variation of ln leaf area on file that is met, 1 - left / all; below 0
 *     where the mean would have done better
 * @param lnBias mean of ln of the leaf area found over that on file
 */
public record HiddenLeaf(int n, double r2, double lnBias) {
  private static final int MOST = 60;
  private static final double LEAST_HEIGHT_M = 3;
  private static final double LEAST_CROWN_M = 0.5;

  /** Trees whose leaf area counts, at most sixty evenly through the file. */
  static HiddenLeaf of(String species, List<StreetTree> measured) {
    return of(species, measured.stream().filter(t -> t.city().leafArea()), MOST);
  }

  /** The same over all cities, also those whose leaf areas follow another method. */
  public static HiddenLeaf ofAllCities(String species, List<StreetTree> measured) {
    return of(species, measured.stream(), MOST);
  }

  private static HiddenLeaf of(
      String species, java.util.stream.Stream<StreetTree> measured, int most) {
    List<StreetTree> whole = measured.filter(HiddenLeaf::whole).toList();
    SpeciesTraits traits = SpeciesLibrary.load().get(species);
    ModelParameters p = ModelParameters.of(traits, GeneralNumbers.table().with(traits.numbers()));
    List<StreetTree> some = spread(whole, most);
    double[] found = some.stream().mapToDouble(t -> Math.log(leafM2(rebuilt(t, p)))).toArray();
    double[] onFile = some.stream().mapToDouble(t -> Math.log(t.leafM2())).toArray();
    return of(found, onFile);
  }

  /** The statistics of pairs of logarithms. */
  static HiddenLeaf of(double[] found, double[] onFile) {
    double mean = IntStream.range(0, onFile.length).mapToDouble(i -> onFile[i]).average().orElse(0);
    double all = 0;
    double left = 0;
    double sum = 0;
    for (int i = 0; i < onFile.length; i++) {
      double error = found[i] - onFile[i];
      all += (onFile[i] - mean) * (onFile[i] - mean);
      left += error * error;
      sum += error;
    }
    return new HiddenLeaf(onFile.length, 1 - left / all, sum / onFile.length);
  }

  private static boolean whole(StreetTree t) {
    return t.heightM() >= LEAST_HEIGHT_M && t.crownM() > LEAST_CROWN_M && t.leafM2() > 0;
  }

  /** Evenly through the file, which runs city by city. */
  private static List<StreetTree> spread(List<StreetTree> all, int most) {
    int n = Math.min(most, all.size());
    return IntStream.range(0, n).mapToObj(i -> all.get((int) ((long) i * all.size() / n))).toList();
  }

  /** The tree as the model rebuilds it. */
  public static TreeState rebuilt(StreetTree t, ModelParameters p) {
    double spread = t.crownM();
    MeasuredTree tree =
        new MeasuredTree(
            t.dbhCm() / 100,
            t.heightM(),
            t.heightM() * (1 - p.species().crownRatioOpen()),
            new double[] {spread, spread, spread, spread},
            1,
            List.of(),
            List.of(),
            0,
            List.of());
    return TreeReconstruction.build(tree, p, 1);
  }

  private static double leafM2(TreeState state) {
    double sum = 0;
    for (int zone = 0; zone < state.limbs.count * Limbs.ZONES; zone++) {
      sum += state.limbs.fullLeafAreaM2[zone] * state.limbs.budFullness[zone];
    }
    return sum;
  }
}
