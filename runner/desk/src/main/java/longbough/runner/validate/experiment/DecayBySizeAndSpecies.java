package longbough.runner.validate.experiment;

import static longbough.runner.validate.experiment.Judged.f;

import java.util.List;
import java.util.Map;
import longbough.model.pruning.Placement;
import longbough.runner.validate.lab.TrunkBench;
import longbough.shared.trait.SpeciesLibrary;

/**
 * D26 and D27: at which size of cut decay in the stem becomes the rule over the species of the
 * library, and how soon open scars of three conifers lead to advanced decay.
 */
public final class DecayBySizeAndSpecies implements Experiment {
  private static final double RING_M = 0.003;
  private static final double TRUNK_M = 0.6;
  private static final double TREE_M = 20;
  private static final int YEARS = 10;

  /** A column that takes this share of the section is advanced stem decay. */
  private static final double ADVANCED = 0.05;

  @Override
  public List<String> checks() {
    return List.of("D26", "D27");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    return List.of(size(checks.get("D26")), scars(checks.get("D27")));
  }

  private static Finding size(Check check) {
    List<String> species = SpeciesLibrary.load().ids();
    double usual = Double.NaN;
    double before = 0;
    boolean rises = true;
    for (int cm = 2; cm <= 30; cm++) {
      double share = decayed(species, cm / 100.0);
      rises &= share >= before;
      before = share;
      if (Double.isNaN(usual) && share > 0.5) {
        usual = cm;
      }
    }
    boolean met = usual >= 12 && usual <= 18;
    return new Judged(
            check,
            f(
                "Collar cuts on trunks of 60 cm of the library's %d species, %d years; stem decay is a"
                    + " column beyond the branch core that takes 5 %% of the section. The source says"
                    + " about 15 cm; we take 12 to 18.",
                species.size(), YEARS))
        .claim(
            f("usual from %.0f cm; in %.0f %% of the species at 30 cm", usual, 100 * before),
            "about 15 cm; threshold",
            met,
            rises && !Double.isNaN(usual));
  }

  private static double decayed(List<String> species, double cutM) {
    int found = 0;
    for (String id : species) {
      TrunkBench bench = TrunkBench.of(id, TRUNK_M, TREE_M);
      bench.cut(Placement.COLLAR, cutM);
      found += share(bench.years(YEARS, RING_M)) > ADVANCED ? 1 : 0;
    }
    return found / (double) species.size();
  }

  private static double share(TrunkBench bench) {
    return bench.context.state.sections.areaFraction[(int) (TrunkBench.WOUND_M * 2)];
  }

  private static Finding scars(Check check) {
    double norway = scarred("picea-abies", 13);
    double sitka = scarred("picea-sitchensis", 13);
    double douglas = scarred("pseudotsuga-menziesii", 13);
    double later = scarred("pseudotsuga-menziesii", 21);
    return new Judged(
            check,
            "Open scars of 20 cm by 60 cm on stems of 30 cm, closure held off, rings of 3 mm; decayed"
                + " share of the section beside the scar. The model does not tell advanced decay from"
                + " discoloration, hence only the order of the species is judged. No hemlock in the"
                + " library; the class of both species was set in sight of this source.")
        .claim(
            f(
                "Norway spruce %.0f %%, Sitka spruce %.0f %%, Douglas fir %.0f %% at 13 years and %.0f %%"
                    + " at 21",
                100 * norway, 100 * sitka, 100 * douglas, 100 * later),
            norway > douglas && norway > later);
  }

  private static double scarred(String species, int years) {
    TrunkBench bench = TrunkBench.of(species, 0.3, TREE_M);
    int w = bench.barkWound(0.2);
    bench.wounds.faceHeightM[w] = 0.6;
    for (int year = 0; year < years; year++) {
      bench.wounds.openWidthM[w] = bench.wounds.faceWidthM[w];
      bench.wounds.openHeightM[w] = bench.wounds.faceHeightM[w];
      bench.years(1, RING_M);
    }
    return share(bench);
  }
}
