package longbough.model.process;

import java.util.Arrays;
import longbough.model.numeric.Fast;
import longbough.model.state.Limbs;

/**
 * Rise and reach of a limb over its length: cosine and sine of its angle from the vertical, kept as
 * long as the angle stays. The values follow from the limb alone, so that keeping them changes no
 * result.
 */
final class LimbAngles {
  private final double[] knownRad = new double[Limbs.MAX];
  private final double[] sin = new double[Limbs.MAX];
  private final double[] cos = new double[Limbs.MAX];

  LimbAngles() {
    Arrays.fill(knownRad, Double.NaN);
  }

  /** Rise of a limb's far end above its attachment over its length. */
  double cos(Limbs limbs, int limb) {
    refresh(limbs, limb);
    return cos[limb];
  }

  /** Horizontal reach of a limb over its length. */
  double sin(Limbs limbs, int limb) {
    refresh(limbs, limb);
    return sin[limb];
  }

  private void refresh(Limbs limbs, int limb) {
    double angle = limbs.insertionRad[limb];
    if (angle != knownRad[limb]) {
      knownRad[limb] = angle;
      sin[limb] = Fast.sin(angle);
      cos[limb] = Fast.cos(angle);
    }
  }
}
