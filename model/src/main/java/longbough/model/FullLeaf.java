package longbough.model;

import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/** Leaf area that a tree carries in summer, whatever the season. */
final class FullLeaf {

  private FullLeaf() {}

  static double areaM2(TreeState state) {
    Limbs limbs = state.limbs;
    double sum = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      sum += limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone];
    }
    return sum;
  }
}
