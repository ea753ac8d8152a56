package longbough.model.surgery;

import longbough.model.history.Flow;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.PruningParameters;
import longbough.model.process.YearContext;
import longbough.model.pruning.CutMix;
import longbough.model.pruning.Placement;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;

/** The tree that is being worked on, how the crew cuts, and what has been done so far. */
public final class Worksite {
  public final OperationTally tally = new OperationTally();
  final ReserveShare reserve = new ReserveShare();
  public YearContext context;
  public TreeState state;
  public ModelParameters parameters;
  public PruningParameters pruning;
  private CutMix cuts;
  private boolean inLeaf;

  /** Starts a visit. The context's random stream must have been started. */
  public void begin(YearContext at, CutMix mix) {
    context = at;
    state = at.state;
    parameters = at.parameters;
    pruning = parameters.pruning();
    cuts = mix;
    tally.beginVisit();
  }

  /** Starts one operation of the visit. */
  public void beginOperation() {
    inLeaf = state.leafAreaM2() > 0;
    tally.beginOperation(foliageM2());
    reserve.begin(state, parameters);
  }

  /**
   * Foliage of a zone, m2: its leaf area, or on a leafless tree the leaf area that its buds are
   * about to unfold (bud fullness times full leaf area).
   */
  public double foliageM2(int zone) {
    Limbs limbs = state.limbs;
    return inLeaf ? limbs.leafAreaM2[zone] : limbs.budFullness[zone] * limbs.fullLeafAreaM2[zone];
  }

  /** Foliage of a limb without its sprouts, m2. */
  public double limbFoliageM2(int limb) {
    int zone = limb * Limbs.ZONES;
    return foliageM2(zone) + foliageM2(zone + 1) + foliageM2(zone + 2);
  }

  /** Foliage of all living limbs without sprouts, m2. */
  public double limbsFoliageM2() {
    double sum = 0;
    for (int limb = 0; limb < state.limbs.count; limb++) {
      if (state.limbs.alive(limb)) {
        sum += limbFoliageM2(limb);
      }
    }
    return sum;
  }

  /** Foliage of the tree with its sprouts, m2. */
  public double foliageM2() {
    return limbsFoliageM2() + state.sprouts.leafAreaM2();
  }

  /**
   * Placement of a cut from the crew's mix. The draw belongs to the place and the year, so that two
   * regimes that cut the same limb in the same year cut it alike.
   */
  public Placement placement(long place) {
    double u = context.random.uniformAt(place);
    if (u < cuts.collar()) {
      return Placement.COLLAR;
    }
    return cuts.stub() == 0 || u < cuts.collar() + cuts.flush() ? Placement.FLUSH : Placement.STUB;
  }

  /** Books carbon that leaves with cut parts, kg C. */
  public void book(double kgC) {
    context.ledger.book(Flow.PRUNED, kgC);
    tally.prunedKgC += kgC;
    tally.changed = true;
  }
}
