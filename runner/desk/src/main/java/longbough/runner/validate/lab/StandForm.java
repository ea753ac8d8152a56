package longbough.runner.validate.lab;

import java.util.List;
import longbough.model.geometry.Allometry;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.tree.MeasuredTree;

/**
 * How a tree that has grown up among others departs from an open-grown one with the same trunk.
 *
 * @param heightFactor its height over that of an open-grown tree
 * @param spreadFactor its crown diameter over that of an open-grown tree
 * @param crownRatio its live crown over its height; NaN as the species has it in the open
 */
public record StandForm(
    double heightFactor, double spreadFactor, double crownRatio, double leaderGrowthM) {
  /** A tree that never had neighbours. */
  public static final StandForm OPEN_GROWN = new StandForm(1, 1, Double.NaN, Double.NaN);

  /**
   * Trees of forests and plantations: medians of the medians of 12 species of this library with
   * trunks above 5 cm (heights), of 5 (spread) and of 7 (live crown), computed from baad-trees.csv
   * (Falster D.S. et al. 2015. Ecology 96:1445) over the open-grown sizes of the species files.
   */
  public static final StandForm FOREST = new StandForm(1.9, 0.72, 0.56, Double.NaN);

  /**
   * Conifers of young plantations. 101 trees of 10 to 20 years and 8 to 20 cm had a live crown of
   * 0.82 (quartiles 0.75 and 0.89) and a crown 21 trunk diameters wide (19 to 23), which is 0.66 of
   * an open-grown Douglas-fir's of 15 cm; 16 Douglas-firs of 5 to 13 m stood 75 to 88 trunk
   * diameters high, 1.5 times as high as open-grown ones (all from baad-trees.csv, as above).
   */
  public static final StandForm YOUNG_CONIFER = new StandForm(1.5, 0.66, 0.82, Double.NaN);

  /** The same form, with a leader that grows so much in a usual year, m. */
  public StandForm growing(double leaderM) {
    return new StandForm(heightFactor, spreadFactor, crownRatio, leaderM);
  }

  MeasuredTree tree(SpeciesParameters s, double dbhM, double condition) {
    double height = heightFactor * Allometry.heightM(s, dbhM);
    double spread = spreadFactor * Allometry.crownDiameterM(s, dbhM);
    double ratio = Double.isNaN(crownRatio) ? s.crownRatioOpen() : crownRatio;
    return new MeasuredTree(
        dbhM,
        height,
        height * (1 - ratio),
        new double[] {spread, spread, spread, spread},
        condition,
        List.of(),
        List.of(),
        0,
        List.of(),
        0,
        leaderGrowthM);
  }
}
