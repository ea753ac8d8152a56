package longbough.model.process;

/** Parts of the state as far as ownership goes. */
public enum StatePart {
  TRUNK,
  /** Shape, status and wood of limbs. */
  LIMBS,
  /** Leaf area, leaf carbon, buds of the zones, leaf ages. */
  FOLIAGE,
  SPROUTS,
  WOUNDS,
  /** Wood, root and growth pools. */
  POOLS,
  RESERVE,
  ROOTS,
  SECTIONS,
  VITALITY
}
