package longbough.model.editor;

import longbough.model.parameter.PruningParameters;
import longbough.model.pruning.Operation;
import longbough.model.state.Limbs;
import longbough.model.state.Sprouts;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.model.surgery.Surgery;

/**
 * Restores a topped tree, over several visits: clears dead stubs, selects the sprouts of headed
 * limbs and of the trunk's top, and lets the best one lead once it is old enough.
 */
final class RestoreEditor {
  private final Surgery surgery;
  private final SelectEditor selection;
  private final DeadwoodEditor deadwood;

  RestoreEditor(Surgery surgery, SelectEditor selection, DeadwoodEditor deadwood) {
    this.surgery = surgery;
    this.selection = selection;
    this.deadwood = deadwood;
  }

  void edit(Operation.RestoreTopped restore) {
    deadwood.clearStubs();
    TreeState state = surgery.site.state;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.tip[limb] == TipState.HEADED.code() && state.sprouts.count[limb] > 0) {
        selection.select(limb, restore.keepOneOf());
        if (limbs.alive(limb) && canLead(limb)) {
          limbs.tip[limb] = TipState.REDUCED.code();
        }
      }
    }
    if (!state.trunk.leaderIntact) {
      int top = Sprouts.trunkCohort(state.trunk.heightM);
      selection.select(top, restore.keepOneOf());
      if (oldEnough(top)) {
        surgery.trunk.newLeader(top);
      }
    }
  }

  /** Few and old enough that one of them holds the others back. */
  private boolean canLead(int limb) {
    return oldEnough(limb)
        && surgery.site.state.sprouts.count[limb] <= surgery.site.pruning.leaderSproutsMost();
  }

  /** On the trunk the crew chooses the leader; it need only be old enough to hold. */
  private boolean oldEnough(int cohort) {
    PruningParameters p = surgery.site.pruning;
    Sprouts sprouts = surgery.site.state.sprouts;
    return sprouts.count[cohort] > 0
        && sprouts.ageYears[cohort] >= p.leaderSproutAgeYears()
        && sprouts.lengthM[cohort] > 0;
  }
}
