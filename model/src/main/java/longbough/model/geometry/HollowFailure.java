package longbough.model.geometry;

import longbough.model.geometry.ResidualStrength.FailureMode;

/**
 * Bending moments at which a closed, centred hollow gives way, each over the moment that breaks a
 * solid trunk of the same radius, π/4 R³ σb: by ordinary bending, by splitting along the grain as
 * the bent shell flattens, or by buckling.
 *
 * <pre>
 * bending   1 - (1 - x)⁴
 * cracking  4 (m x)^1.5 √(2/3 · e · s)       hoop stress 1.5 M² / (EL π² (m R)³ (x R)³) reaches σT
 * buckling  (8 √2 / 9) m x² · e √a          Brazier's limit, M = (2 √2 / 9) π m R (x R)² √(EL ET)
 * </pre>
 *
 * x wall over radius t/R, m = 1 - x/2 mean radius of the wall over R, e = EL/σb stiffness along the
 * grain over modulus of rupture, a = ET/EL stiffness across over along the grain, s = σT/σb tensile
 * strength across the grain over modulus of rupture (all dimensionless). The hoop moment of a bent
 * thin tube, EL κ² m³ R³ · x R / 4 at curvature κ (1/m), follows from its flattening (Brazier L.G.
 * 1927, Proceedings of the Royal Society A 116:104-114, as we recall it; Poisson's ratios left
 * out); that hollow trunks split so before they bend is Huang et al. 2017. Thin-walled theory:
 * above x of about 0.3 only the bending moment is of use; without side openings.
 */
public record HollowFailure(double stiffness, double acrossStiffness, double acrossStrength) {
  private static final double BRAZIER = 8 * Math.sqrt(2) / 9;
  private static final int HALVINGS = 60;

  public double bending(double wallRatio) {
    double hole = 1 - wallRatio;
    return 1 - hole * hole * hole * hole;
  }

  public double cracking(double wallRatio) {
    return cracking(wallRatio, stiffness, acrossStrength);
  }

  public double buckling(double wallRatio) {
    return buckling(wallRatio, stiffness, acrossStiffness);
  }

  private static double cracking(double wallRatio, double stiffness, double acrossStrength) {
    double shell = (1 - wallRatio / 2) * wallRatio;
    return 4 * shell * Math.sqrt(shell) * Math.sqrt(2 * stiffness * acrossStrength / 3);
  }

  private static double buckling(double wallRatio, double stiffness, double acrossStiffness) {
    double mean = 1 - wallRatio / 2;
    return BRAZIER * mean * wallRatio * wallRatio * stiffness * Math.sqrt(acrossStiffness);
  }

  /** Moment at which the shell splits or buckles, over that of a solid trunk. */
  public static double flattening(
      double wallRatio, double stiffness, double acrossStiffness, double acrossStrength) {
    return Math.min(
        cracking(wallRatio, stiffness, acrossStrength),
        buckling(wallRatio, stiffness, acrossStiffness));
  }

  /** What gives way first. */
  public FailureMode mode(double wallRatio) {
    double least = Math.min(bending(wallRatio), Math.min(cracking(wallRatio), buckling(wallRatio)));
    if (least == buckling(wallRatio)) {
      return FailureMode.BUCKLING;
    }
    return least == cracking(wallRatio) ? FailureMode.CRACKING : FailureMode.BENDING;
  }

  /** Least wall over radius at which this mode or a later one governs. */
  public double from(FailureMode mode) {
    double below = 0;
    double above = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (below + above) / 2;
      if (mode(middle).compareTo(mode) >= 0) {
        above = middle;
      } else {
        below = middle;
      }
    }
    return above;
  }
}
