package longbough.runner.drawing.look;

/** The mark that stands for foliage. */
public enum FoliageLook {
  /** Clusters of leaves. */
  LEAVES,
  /** Needles along drooping twigs, as in spruce and fir. */
  SPRAYS,
  /** Tufts of long needles, as in pine. */
  TUFTS,
  /** Dense fans of scales, as in cypress. */
  FANS
}
