package longbough.model.editor;

import longbough.model.parameter.PruningParameters;
import longbough.model.pruning.Operation;
import longbough.model.state.Sprouts;
import longbough.model.surgery.Surgery;

/**
 * Selects sprouts: of every n in a cohort the strongest is kept, at least one a cohort, the others
 * are taken at the base. The kept ones weigh g times the mean shoot (never more than there was), so
 * their mean length grows by the cube root of that. Source: a rule of proportion; g is an
 * assumption.
 */
final class SelectEditor {
  private final Surgery surgery;

  SelectEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.SelectSprouts select) {
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      select(cohort, select.keepOneOf());
    }
  }

  void select(int cohort, double keepOneOf) {
    Sprouts sprouts = surgery.site.state.sprouts;
    double before = sprouts.count[cohort];
    if (!(keepOneOf > 1) || !(before > 1)) {
      return;
    }
    PruningParameters p = surgery.site.pruning;
    double kept = Math.max(1, before / keepOneOf) / before;
    double size = Math.min(p.keptSproutSize(), 1 / kept);
    surgery.sprouts.take(cohort, 1 - kept, 1 - size * kept, false, p.bankGainSelection());
    sprouts.lengthM[cohort] *= StrictMath.cbrt(size);
  }
}
