package longbough.model.pruning;

/** What can bring a crew out. */
public enum TriggerMeasure {
  /** Leaf area of sprouts over all leaf area. */
  SPROUT_LEAF_SHARE,
  /** Dry mass of dead limbs, kg. */
  DEADWOOD_KG,
  /** Reserve over its ceiling. */
  RESERVE_FRACTION,
  /** Height of the tree, m. */
  HEIGHT_M,
  /** Height of the lowest living limb, m. */
  CROWN_BASE_M,
  /** Open wound, cm2. */
  OPEN_WOUND_CM2
}
