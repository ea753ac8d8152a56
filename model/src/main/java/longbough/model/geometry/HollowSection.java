package longbough.model.geometry;

/**
 * Closed forms for a round section of diameter D with one round hole of diameter d whose centre
 * lies off the middle by e (all m): the reference that {@link SectionModulus} is tested against.
 *
 * <p>Sound area A = π/4 (D² - d²); centroid shift y = -(π/4 d²) e / A; second moment about the
 * centroid, across the offset, I = π/64 (D⁴ - d⁴) - (π/4 d²) e² - A y² (parallel-axis theorem);
 * modulus W = I / (D/2 + |y|). Exact for holes that lie wholly inside.
 */
public record HollowSection(double outerM, double holeM, double offsetM) {

  public double areaLoss() {
    return holeM * holeM / (outerM * outerM);
  }

  public double shiftM() {
    double hole = Math.PI / 4 * holeM * holeM;
    return hole * offsetM / (Math.PI / 4 * outerM * outerM - hole);
  }

  /** Second moment of area about the weak axis, m4. */
  public double secondMomentM4() {
    double hole = Math.PI / 4 * holeM * holeM;
    double area = Math.PI / 4 * outerM * outerM - hole;
    double shift = shiftM();
    double solid = Math.PI / 64 * outerM * outerM * outerM * outerM;
    double own = Math.PI / 64 * holeM * holeM * holeM * holeM;
    return solid - own - hole * offsetM * offsetM - area * shift * shift;
  }

  /** Section modulus in the weak direction, m3. */
  public double modulusM3() {
    return secondMomentM4() / (outerM / 2 + Math.abs(shiftM()));
  }

  public double secondMomentLoss() {
    return 1 - secondMomentM4() / (Math.PI / 64 * outerM * outerM * outerM * outerM);
  }

  public double modulusLoss() {
    return 1 - modulusM3() / (Math.PI / 32 * outerM * outerM * outerM);
  }
}
