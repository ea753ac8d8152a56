package longbough.model.geometry;

import longbough.model.state.SectorHoles;

/** One section on a polar grid, measured as the yearly loop does. */
final class GridSection {
  final SectorHoles holes;
  private final SectionModulus modulus;
  private final double radiusM;

  GridSection(int sectors, double radiusM) {
    holes = new SectorHoles(sectors);
    modulus = new SectionModulus(new SectorGrid(sectors));
    this.radiusM = radiusM;
  }

  double areaFraction() {
    return modulus.areaFraction(missing(), 0, radiusM);
  }

  double loss() {
    return modulus.loss(holes, 0, modulus.open(holes, 0), missing(), 0, radiusM);
  }

  double wallRatio() {
    return modulus.wallRatio(missing(), 0, radiusM);
  }

  private double[] missing() {
    double[] moments = new double[SectionModulus.MOMENTS];
    modulus.missing(holes, 0, radiusM, moments, 0);
    return moments;
  }
}
