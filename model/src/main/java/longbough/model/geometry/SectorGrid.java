package longbough.model.geometry;

import longbough.model.state.Sections;

/**
 * Equal sectors round the pith, sector k centred on the angle k · 2π / n (rad): the constants that
 * integrals over annular sectors need. Immutable.
 */
public final class SectorGrid {
  /** The grid of {@link Sections}. */
  public static final SectorGrid STANDARD = new SectorGrid(Sections.SECTORS);

  final int sectors;
  final double widthRad;
  final double[] cos;
  final double[] sin;

  /** Cosine and sine of twice the sector's angle. */
  final double[] cosTwice;

  final double[] sinTwice;

  /** Cosine of the angle from a sector's centre to the near edge of the j-th sector from it. */
  final double[] nearEdgeCos;

  /** A grid of an even number of sectors. */
  public SectorGrid(int sectors) {
    if (sectors < 4 || sectors % 2 != 0) {
      throw new IllegalArgumentException(
          "sectors = " + sectors + ": must be an even number from 4 on");
    }
    this.sectors = sectors;
    this.widthRad = 2 * Math.PI / sectors;
    this.cos = new double[sectors];
    this.sin = new double[sectors];
    this.cosTwice = new double[sectors];
    this.sinTwice = new double[sectors];
    this.nearEdgeCos = new double[sectors];
    for (int k = 0; k < sectors; k++) {
      cos[k] = StrictMath.cos(k * widthRad);
      sin[k] = StrictMath.sin(k * widthRad);
      cosTwice[k] = StrictMath.cos(2 * k * widthRad);
      sinTwice[k] = StrictMath.sin(2 * k * widthRad);
      nearEdgeCos[k] = k == 0 ? 1 : StrictMath.cos((k - 0.5) * widthRad);
    }
  }

  public int sectors() {
    return sectors;
  }

  public double widthRad() {
    return widthRad;
  }

  /** Cosine of the angle of the middle of a sector. */
  public double cosOf(int k) {
    return cos[k];
  }

  public double sinOf(int k) {
    return sin[k];
  }

  /** Sector whose centre lies nearest to an angle of 0 to 2π (rad, any whole turns). */
  public int nearest(double angleRad) {
    double turns = angleRad / widthRad + 0.5;
    int k = (int) Math.floor(turns) % sectors;
    return k < 0 ? k + sectors : k;
  }
}
