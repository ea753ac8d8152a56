package longbough.model.state;

/** Parts of the tree that keep stored sugar of their own, from the leaves downwards. */
public enum Organ {
  LEAF,
  /** Limbs and sprouts with their twigs. */
  BRANCH,
  STEM,
  /** Coarse roots. */
  ROOT;

  static final int COUNT = values().length;
}
