package longbough.model.history;

/** Every way carbon enters or leaves the tree. */
public enum Flow {
  ASSIMILATION(+1),
  MAINTENANCE(-1),
  GROWTH_RESPIRATION(-1),
  LEAF_LITTER(-1),
  ROOT_LITTER(-1),
  /** Dead limbs, stubs and sprouts that fall. */
  SHED_WOOD(-1),
  PRUNED(-1),
  EATEN(-1),
  /** Broken off by wind, snow or ice. */
  BROKEN(-1),
  /** Flowers, seeds, root exudates, fungal partners. */
  SEEDS_AND_EXUDATES(-1),
  /** Sugar that finds no sink: exuded or respired. */
  OVERFLOW(-1);

  private final int sign;

  Flow(int sign) {
    this.sign = sign;
  }

  public int sign() {
    return sign;
  }
}
