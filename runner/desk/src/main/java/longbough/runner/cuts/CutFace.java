package longbough.runner.cuts;

import longbough.model.state.Wounds;

/**
 * The face of a cut some years on, as the model has it: an ellipse, of which woundwood has covered
 * the rim. Lengths m.
 *
 * @param year years since the cut
 * @param widthM width of the face when it was cut, across the trunk
 * @param heightM and along it
 * @param openWidthM width of what is still open; 0 where closed
 * @param openHeightM and its height
 * @param stubM length of dead stub that woundwood has still to grow past
 * @param branchM diameter of the branch
 */
public record CutFace(
    int year,
    double widthM,
    double heightM,
    double openWidthM,
    double openHeightM,
    double stubM,
    double branchM) {

  static CutFace of(Wounds wounds, int w, int year) {
    return new CutFace(
        year,
        wounds.faceWidthM[w],
        wounds.faceHeightM[w],
        wounds.openWidthM[w],
        wounds.openHeightM[w],
        wounds.open(w) ? wounds.stubM[w] : 0,
        wounds.cutDiameterM[w]);
  }

  public boolean closed() {
    return openWidthM <= 0 || openHeightM <= 0;
  }
}
