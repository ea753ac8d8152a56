package longbough.model.pruning;

/**
 * How a crew places its cuts.
 *
 * @param collar share of collar cuts
 * @param flush share of flush cuts
 * @param stub share of stubs; the three sum to 1
 */
public record CutMix(double collar, double flush, double stub) {

  public CutMix {
    if (!(collar >= 0 && flush >= 0 && stub >= 0 && Math.abs(collar + flush + stub - 1) < 1e-6)) {
      throw new IllegalArgumentException(
          "shares of collar, flush and stub cuts must be 0 or more and sum to 1, found "
              + collar
              + ", "
              + flush
              + ", "
              + stub);
    }
  }
}
