package longbough.model.editor;

import longbough.model.parameter.PruningParameters;
import longbough.model.pruning.CutKind;
import longbough.model.pruning.Operation;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.surgery.Surgery;

/** Strips sprouts: a share of every cohort, at the base or leaving pegs that will break again. */
final class StripEditor {
  private final Surgery surgery;

  StripEditor(Surgery surgery) {
    this.surgery = surgery;
  }

  void edit(Operation.StripSprouts strip) {
    PruningParameters p = surgery.site.pruning;
    boolean pegs = strip.cut() == CutKind.HEADING;
    double gain = pegs ? p.bankGainPegs() : p.bankGainBase();
    double[] count = surgery.site.state.sprouts.count;
    for (int cohort = 0; cohort < Sprouts.MAX; cohort++) {
      if (count[cohort] > 0 && strip.share() > 0) {
        surgery.sprouts.take(cohort, strip.share(), strip.share(), pegs, gain);
        if (pegs && cohort < Limbs.MAX) {
          surgery.limbs.stimulate(cohort, p.stimulusPegs() * strip.share());
        }
      }
    }
  }
}
