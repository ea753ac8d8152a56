package longbough.model.editor;

import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.state.Limbs;
import longbough.model.surgery.Surgery;

/**
 * Opens a window: takes a share of the foliage whose zone lies in a height band, on limbs that
 * stand in a sector of the compass (clockwise from one bearing to the other), by removal cuts;
 * sprouts there too.
 */
final class WindowEditor {
  private final Surgery surgery;

  WindowEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.OpenWindow window) {
    double share = Double.isNaN(window.share()) ? 1 : window.share();
    if (!(share > 0)) {
      return;
    }
    Limbs limbs = surgery.site.state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)
          && Bearings.within(
              window.fromBearingDeg(), window.toBearingDeg(), limbs.azimuthRad[limb])) {
        clear(window, limb, share);
      }
    }
  }

  private void clear(Operation.OpenWindow window, int limb, double share) {
    if (inBand(window, surgery.sprouts.baseHeightM(limb))) {
      double gain = surgery.site.pruning.bankGainBase();
      surgery.sprouts.take(limb, share, share, false, gain);
    }
    surgery.limbs.takeFoliage(
        limb,
        inBand(window, zoneHeightM(limb, Limbs.INNER)) ? share : 0,
        inBand(window, zoneHeightM(limb, Limbs.MIDDLE)) ? share : 0,
        inBand(window, zoneHeightM(limb, Limbs.OUTER)) ? share : 0,
        CutKind.REMOVAL);
  }

  private double zoneHeightM(int limb, int zone) {
    Limbs limbs = surgery.site.state.limbs;
    double rise = limbs.tipHeightM(limb) - limbs.heightM[limb];
    return limbs.heightM[limb] + Limbs.zonePosition(zone) * rise;
  }

  private static boolean inBand(Operation.OpenWindow window, double heightM) {
    return !(heightM < window.fromHeightM()) && !(heightM > window.toHeightM());
  }
}
