package longbough.model.editor;

import longbough.model.pruning.Operation;
import longbough.model.surgery.Surgery;

/** Hands each operation to its editor. */
public final class Editors {
  private final ThinEditor thin;
  private final RaiseEditor raise;
  private final WindowEditor window;
  private final ReduceEditor reduce;
  private final CutBackEditor cutBack;
  private final TopEditor top;
  private final ShearEditor shear;
  private final StripEditor strip;
  private final SelectEditor select;
  private final RestoreEditor restore;
  private final DeadwoodEditor deadwood;

  public Editors(Surgery surgery) {
    thin = new ThinEditor(surgery);
    raise = new RaiseEditor(surgery);
    window = new WindowEditor(surgery);
    reduce = new ReduceEditor(surgery);
    cutBack = new CutBackEditor(surgery, reduce);
    top = new TopEditor(surgery);
    shear = new ShearEditor(surgery);
    strip = new StripEditor(surgery);
    select = new SelectEditor(surgery);
    deadwood = new DeadwoodEditor(surgery);
    restore = new RestoreEditor(surgery, select, deadwood);
  }

  /** Does the operation on the tree that the surgery is at work on. */
  public void edit(Operation operation) {
    if (operation instanceof Operation.RemoveDeadwood o) {
      deadwood.edit(o);
    } else if (operation instanceof Operation.Thin o) {
      thin.edit(o);
    } else if (operation instanceof Operation.Raise o) {
      raise.edit(o);
    } else if (operation instanceof Operation.OpenWindow o) {
      window.edit(o);
    } else if (operation instanceof Operation.Reduce o) {
      reduce.edit(o);
    } else if (operation instanceof Operation.CutBack o) {
      cutBack.edit(o);
    } else if (operation instanceof Operation.Top o) {
      top.edit(o);
    } else if (operation instanceof Operation.Shear o) {
      shear.edit(o);
    } else if (operation instanceof Operation.StripSprouts o) {
      strip.edit(o);
    } else if (operation instanceof Operation.SelectSprouts o) {
      select.edit(o);
    } else if (operation instanceof Operation.RestoreTopped o) {
      restore.edit(o);
    } else {
      throw new IllegalStateException("no editor for " + operation.word());
    }
  }
}
