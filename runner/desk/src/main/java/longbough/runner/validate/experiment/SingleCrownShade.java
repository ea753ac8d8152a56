package longbough.runner.validate.experiment;

import java.util.List;
import java.util.Map;
import longbough.model.process.CrownShade;
import longbough.runner.validate.lab.Bench;
import longbough.runner.validate.lab.Lab;

/** U18, U19: how much sunlight single crowns of middle size stop, in leaf and leafless. */
public final class SingleCrownShade implements Experiment {
  private static final double DBH_M = 0.25;
  private static final List<String> SPECIES =
      List.of("acer-rubrum", "gleditsia-triacanthos", "acer-saccharum");
  private static final String SET_UP =
      "Red maple, honey locust and sugar maple of 25 cm, open-grown, mean over the shadow straight"
          + " below.";

  @Override
  public List<String> checks() {
    return List.of("U18", "U19");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    double[] leafy = new double[SPECIES.size()];
    double[] bare = new double[SPECIES.size()];
    boolean less = true;
    for (int i = 0; i < leafy.length; i++) {
      Bench bench = Bench.inLeaf(Lab.of(SPECIES.get(i), DBH_M, Lab.MARITIME, 1, 1));
      leafy[i] = 1 - CrownShade.inLeaf(bench.context.light, bench.context.parameters);
      bare[i] = 1 - CrownShade.leafless(bench.context.light, bench.context.parameters);
      less &= bare[i] < leafy[i];
    }
    Check inLeaf = checks.get("U18");
    Check leafless = checks.get("U19");
    boolean lightest = leafy[1] < leafy[0] && leafy[1] < leafy[2];
    return List.of(
        new Judged(inLeaf, SET_UP)
            .claim(
                Trees.say(2, leafy),
                inLeaf.band(),
                inLeaf.holdsEach(leafy),
                lightest,
                inLeaf.readings(leafy)),
        new Judged(leafless, SET_UP)
            .claim(
                Trees.say(2, bare),
                leafless.band(),
                leafless.holdsEach(bare),
                less,
                leafless.readings(bare)));
  }
}
