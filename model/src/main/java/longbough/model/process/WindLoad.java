package longbough.model.process;

import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.Trunk;

/** Wind load on the tree and the gusts it withstands; scratch of one year. */
public final class WindLoad {
  /** {@link #weakestCohort} where no limb or sprout is thick enough to count. */
  public static final int NONE = -1;

  /**
   * Load at 10 m that enters the trunk at each station, in leaf, m2: drag area of what is attached
   * there, each leaf at the wind of its own height.
   */
  public final double[] loadInLeafM2 = new double[Trunk.MAX_STATIONS];

  public final double[] loadLeaflessM2 = new double[Trunk.MAX_STATIONS];

  /** Moment of that load about its station, m3. */
  public final double[] turnInLeafM3 = new double[Trunk.MAX_STATIONS];

  public final double[] turnLeaflessM3 = new double[Trunk.MAX_STATIONS];

  /** Decay below a limb's heading cuts as a share of its radius there, by limb, 0 to 1. */
  public final double[] limbDecayShare = new double[Limbs.MAX];

  /** Drag area in leaf per leaf area, mutual shelter included. */
  public double areaPerLeafArea;

  /** Bending moment at the ground at the reference speed, as last computed, N m. */
  public double baseMomentNm;

  /** Height of the centre of the drag area, m; 0 for a bare tree. */
  public double centreM;

  /** Gust (3 s, 10 m, open country) that breaks the stem, in leaf and leafless, m/s. */
  public double stemInLeafMs;

  public double stemLeaflessMs;

  /** Gust that uproots the tree, m/s. */
  public double rootInLeafMs;

  public double rootLeaflessMs;

  /** Gust that breaks the weakest limb or sprout if it has the mean strength, m/s. */
  public double limbInLeafMs;

  public double limbLeaflessMs;

  /**
   * Hazard of each limb, and of each sprout cohort, of breaking at the reference speed in leaf; see
   * {@link BranchHazard}.
   */
  public final double[] limbHazard = new double[Limbs.MAX];

  public final double[] sproutHazard = new double[Sprouts.MAX];

  /** Sum of the hazards of all limbs and sprout cohorts. */
  public double branchHazard;

  /** Sprout cohort or limb index of the weakest union, or {@link #NONE}. */
  public int weakestCohort = NONE;

  /** Whether the weakest union is that of a sprout. */
  public boolean weakestIsSprout;

  /** Base diameter at the weakest union, m. */
  public double weakestDiameterM;

  /** Station with the least strength against its load. */
  public int worstStation;
}
