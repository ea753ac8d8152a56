package longbough.model.pruning;

/** Part of the limbs from which foliage is taken. */
public enum Where {
  EVENLY,
  /** From the inside of the crown only: lion-tailing. */
  INNER,
  TIPS
}
