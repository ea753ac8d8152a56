package longbough.runner.cuts;

import java.util.ArrayList;
import java.util.List;
import longbough.model.pruning.Placement;
import longbough.model.state.Wounds;
import longbough.runner.validate.lab.TrunkBench;

/**
 * One cut on a bare trunk, some years on. Lengths in m, shares from 0 to 1.
 *
 * @param species id of the species
 * @param placement where the cut was made
 * @param diameterM diameter of the branch
 * @param years years played
 * @param closedYears years until woundwood had closed the face; NaN where it is still open
 * @param columnUpM reach of discoloured or decayed wood above the cut
 * @param columnDownM and below
 * @param depthM how deep the column lies in the wood that stood at the cut
 * @param sectionShare share of the trunk's section decayed where it is worst
 * @param strengthLoss share of the section modulus lost where it is worst
 * @param boundM radius of the trunk at the cut when it was made: the barrier zone
 * @param faces the face in every year from the cut (0) to the last
 */
public record CutTrial(
    String species,
    Placement placement,
    double diameterM,
    int years,
    double closedYears,
    double columnUpM,
    double columnDownM,
    double depthM,
    double sectionShare,
    double strengthLoss,
    double boundM,
    List<CutFace> faces) {

  /**
   * Plays it: reserve at 0.7 of its ceiling, an even ring every year, a cut in spring.
   *
   * @param trunkM diameter of the trunk at breast height, m
   * @param ringM growth of the radius a year, m
   */
  public static CutTrial play(
      String species,
      Placement placement,
      double diameterM,
      double trunkM,
      double ringM,
      int years) {
    TrunkBench bench = TrunkBench.of(species, trunkM, heightM(trunkM));
    int w = bench.cut(placement, diameterM);
    double bound = bench.wounds.parentRadiusM[w];
    double closed = Double.NaN;
    List<CutFace> faces = new ArrayList<>(List.of(CutFace.of(bench.wounds, w, 0)));
    for (int year = 1; year <= years; year++) {
      bench.years(1, ringM);
      faces.add(CutFace.of(bench.wounds, w, year));
      if (Double.isNaN(closed) && !bench.wounds.open(w)) {
        closed = year;
      }
    }
    Wounds wounds = bench.wounds;
    double share = 0;
    double loss = 0;
    for (int s = 0; s < bench.context.state.trunk.stations; s++) {
      share = Math.max(share, bench.context.state.sections.areaFraction[s]);
      loss = Math.max(loss, bench.context.state.sections.strengthLoss[s]);
    }
    return new CutTrial(
        species,
        placement,
        diameterM,
        years,
        closed,
        wounds.columnUpM[w],
        wounds.columnDownM[w],
        wounds.columnDepthM[w],
        share,
        loss,
        bound,
        List.copyOf(faces));
  }

  /** An open-grown trunk of 40 cm is some 14 m high; higher with the root of its thickness. */
  private static double heightM(double trunkM) {
    return 14 * Math.sqrt(trunkM / 0.4);
  }
}
