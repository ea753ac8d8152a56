package longbough.runner.validate.experiment;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import longbough.model.history.YearColumn;
import longbough.model.state.TreeState;
import longbough.runner.validate.lab.Lab;
import longbough.runner.validate.lab.Played;
import longbough.shared.trait.LeafHabit;
import longbough.shared.trait.LeafType;
import longbough.shared.trait.SpeciesLibrary;
import longbough.shared.trait.SpeciesTraits;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * F07-F10: leaf against sapwood area, leaf mass per area, root against shoot, and the sapwood share
 * of the section, after some years of growth. The trees that were measured stood mostly in forests,
 * ours stand in the open; European beech stands in for American, green ash for white.
 */
public final class LeafWoodRoot implements Experiment {
  private static final int YEARS = 10;
  private static final int MEMBERS = 10;
  private static final double DBH_M = 0.3;
  private static final List<String> SAPWOOD =
      List.of(
          "quercus-rubra",
          "liriodendron-tulipifera",
          "fraxinus-pennsylvanica",
          "acer-rubrum",
          "fagus-sylvatica");
  private static final double SHARE_TOLERANCE = 0.15;
  private static final String SET_UP =
      "Norway maple, red oak, small-leaved lime and green ash (blue spruce, white pine and Douglas"
          + " fir for conifers) of 30 cm dbh in the open, maritime climate, 10 futures of ten years.";

  @Override
  public List<String> checks() {
    return List.of("F07", "F08", "F09", "F10");
  }

  @Override
  public List<Finding> run(Map<String, Check> checks) {
    List<Played> deciduous = Trees.play(Trees.DECIDUOUS, s -> lab(s, DBH_M).alone(YEARS));
    List<Played> conifers = Trees.play(Trees.CONIFERS, s -> lab(s, DBH_M).alone(YEARS));
    return List.of(
        leafOverSapwood(checks.get("F07"), deciduous),
        leafMass(checks.get("F08")),
        rootOverShoot(checks.get("F09"), deciduous, conifers),
        sapwood(checks.get("F10")));
  }

  private static Finding leafOverSapwood(Check check, List<Played> grown) {
    double ratio =
        Trees.mean(
            grown,
            p -> p.mean(YearColumn.LEAF_AREA_M2, YEARS) / p.meanState(YEARS, LeafWoodRoot::sapM2));
    double[] each =
        grown.stream()
            .mapToDouble(
                p ->
                    p.mean(YearColumn.LEAF_AREA_M2, YEARS)
                        / p.meanState(YEARS, LeafWoodRoot::sapM2))
            .toArray();
    boolean held = check.holds(ratio);
    return new Finding(
        check.id(),
        Trees.say(0, ratio) + " m2/m2 (by species " + Trees.say(0, each) + ")",
        check.band(),
        held,
        held,
        SET_UP,
        check.readings(ratio));
  }

  private static double sapM2(TreeState state) {
    double radius = state.trunk.dbhM() / 2;
    return state.trunk.sapwoodShare * Math.PI * radius * radius;
  }

  // The source's figures are medians over many species, so both groups are the whole library's.
  private static Finding leafMass(Check check) {
    double broad =
        leafMass(s -> s.leafType() == LeafType.BROADLEAF && s.leafHabit() == LeafHabit.DECIDUOUS);
    double needle = leafMass(s -> s.leafType() == LeafType.NEEDLE);
    double times = needle / broad;
    return new Finding(
        check.id(),
        Trees.say(3, broad) + " kg/m2, conifers " + Trees.say(1, times) + " times that",
        check.band() + ", conifers 3 to 4 times",
        check.holds(broad),
        times >= 3 && times <= 4,
        "Medians over all deciduous broadleaves and all needle trees of the library; each the mean"
            + " over the sun and shade leaves of the crown of an open-grown tree of 30 cm dbh.",
        List.of(check.readings(broad).get(0), new Reading(times, 3, 4)));
  }

  private static double leafMass(Predicate<SpeciesTraits> group) {
    SpeciesLibrary library = SpeciesLibrary.load();
    double[] each =
        library.ids().stream()
            .filter(id -> group.test(library.get(id)))
            .mapToDouble(id -> Trees.leafMassPerAreaKgM2(lab(id, DBH_M)))
            .toArray();
    return new Median().evaluate(each);
  }

  private static Finding rootOverShoot(Check check, List<Played> deciduous, List<Played> conifers) {
    double broad = Trees.mean(deciduous, p -> p.meanState(YEARS, LeafWoodRoot::rootOverShoot));
    double needle = Trees.mean(conifers, p -> p.meanState(YEARS, LeafWoodRoot::rootOverShoot));
    boolean held = check.holdsEach(broad, needle);
    return new Finding(
        check.id(),
        Trees.say(2, broad, needle),
        check.band(),
        held,
        needle < broad,
        SET_UP + " Roots with fine roots; shoots at the year's end, so without deciduous leaves.",
        check.readings(broad, needle));
  }

  private static double rootOverShoot(TreeState state) {
    double root = state.pools.coarseRootKgC + state.pools.fineRootKgC;
    double trunk = state.pools.trunkSapwoodKgC + state.pools.trunkHeartwoodKgC;
    return root / (trunk + state.limbs.livingWoodKgC() + state.leafKgC());
  }

  private static Finding sapwood(Check check) {
    double[] published = Check.numbers(check.published());
    double[] share =
        SAPWOOD.stream()
            .mapToDouble(
                s -> lab(s, DBH_M).alone(YEARS).meanState(YEARS, t -> t.trunk.sapwoodShare))
            .toArray();
    boolean near =
        IntStream.range(0, share.length)
            .allMatch(i -> Math.abs(share[i] - published[i]) <= SHARE_TOLERANCE);
    double[] sorted = share.clone();
    Arrays.sort(sorted);
    return new Finding(
        check.id(),
        Trees.say(2, share),
        check.published() + ", each within 0.15, order kept",
        near,
        Arrays.equals(sorted, share),
        "Red oak, tulip tree, green ash for white ash, red maple, European for American beech; grown"
            + " ten years from 30 cm dbh in the open, maritime climate, 10 futures.",
        IntStream.range(0, share.length)
            .mapToObj(i -> Reading.near(share[i], published[i], SHARE_TOLERANCE))
            .toList());
  }

  private static Lab lab(String species, double dbhM) {
    return Lab.of(species, dbhM, Lab.MARITIME, YEARS, MEMBERS);
  }
}
