package longbough.runner.validate.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longbough.model.parameter.LightParameters;
import longbough.model.parameter.ModelParameters;
import longbough.model.process.CrownShade;
import longbough.runner.validate.lab.Bench;
import longbough.runner.validate.lab.BoxCrown;
import longbough.runner.validate.lab.Lab;
import longbough.shared.trait.SpeciesLibrary;

/**
 * F31 sky seen straight up through one crown, in leaf and leafless; F32 an opaque ball under an
 * even sky.
 */
public final class LoneCrown implements Experiment {
  private static final double MATURE_DBH_M = 0.6;
  private static final double EVEN_SKY = 2;
  private static final double[] LEAF_INDEX = {6, 8, 12};

  @Override
  public List<String> checks() {
    return List.of("F31", "F32");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(sky(), ball());
  }

  private static Finding sky() {
    List<String> species =
        SpeciesLibrary.load().ids().stream().filter(LeafTraits::deciduous).toList();
    double[] inLeaf = new double[species.size()];
    double[] bare = new double[species.size()];
    double wood =
        Lab.of(species.get(0), MATURE_DBH_M, Lab.MARITIME, 1, 1)
            .meanParameters()
            .light()
            .bareWoodShare();
    for (int i = 0; i < inLeaf.length; i++) {
      Bench bench = Bench.inLeaf(Lab.of(species.get(i), MATURE_DBH_M, Lab.MARITIME, 1, 1));
      ModelParameters p = bench.context.parameters;
      inLeaf[i] = CrownShade.inLeaf(bench.context.light, p);
      bare[i] = CrownShade.leafless(bench.context.light, p);
    }
    java.util.Arrays.sort(inLeaf);
    java.util.Arrays.sort(bare);
    double leafy = inLeaf[inLeaf.length / 2];
    double leafless = bare[bare.length / 2];
    return new Finding(
        "F31",
        String.format(
            Locale.ROOT,
            "%.2f in leaf, %.2f leafless; wood is %.2f of the summer depth",
            leafy,
            leafless,
            wood),
        "0.08 to 0.30 and 0.40 to 0.60; wood 0.25 to 0.50",
        leafy >= 0.08 && leafy <= 0.30 && leafless >= 0.40 && leafless <= 0.60,
        wood >= 0.25 && wood <= 0.50,
        "Median of the library's deciduous broadleaves of 60 cm, open-grown, looking straight up over"
            + " the whole shadow; leafless as the wood's part of the depth.",
        List.of(new Reading(leafy, 0.08, 0.30), new Reading(leafless, 0.40, 0.60)));
  }

  private static Finding ball() {
    Lab lime = Lab.of("tilia-cordata", 0.4, Lab.MARITIME, 1, 1);
    LightParameters own = lime.meanParameters().light();
    ModelParameters p = BoxCrown.parameters(lime, own.with(EVEN_SKY, 1, 0));
    StringBuilder got = new StringBuilder();
    boolean met = true;
    List<Reading> readings = new ArrayList<>();
    boolean more = true;
    for (double leafIndex : LEAF_INDEX) {
      double caught = BoxCrown.ball(5, leafIndex, p).caughtShare();
      readings.add(Reading.near(caught, 2, 0.02));
      met &= Math.abs(caught / 2 - 1) <= 0.01;
      more &= caught > 1.5;
      got.append(got.isEmpty() ? "" : " / ").append(String.format(Locale.ROOT, "%.2f", caught));
    }
    return new Finding(
        "F32",
        got.toString(),
        "2.0 within 1 %",
        met,
        more,
        "A ball of 5 m radius in the light grid under an even sky, with 6, 8 and 12 m2 of leaf over"
            + " each m2 of shadow, which stop nearly all light; the model keeps no single sun beam, so"
            + " 1/sin(e) is not tried; the weaker claim taken as over 1.5.",
        readings);
  }
}
