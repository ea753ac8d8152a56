package longbough.model;

import java.util.ArrayList;
import java.util.List;
import longbough.model.history.CarbonLedger;
import longbough.model.history.Flow;
import longbough.model.history.History;
import longbough.model.history.WoundRow;
import longbough.model.history.YearColumn;
import longbough.model.process.YearContext;
import longbough.model.pruning.Placement;
import longbough.model.state.TreeState;
import longbough.model.state.Vitality;
import longbough.model.state.Wounds;

/** Writes a state into one row of a history, in the units of the tidy files. */
final class Recorder {
  private static final double CM = 100;
  private static final double CM2 = 10_000;
  private static final Placement[] PLACEMENTS = Placement.values();

  private Recorder() {}

  /** The tree as measured: year 0. */
  static void start(History history, TreeState state, double fullLeafAreaM2, double woodCarbon) {
    common(history, state, woodCarbon);
    history.set(YearColumn.LEAF_AREA_M2, state.year, fullLeafAreaM2);
    history.set(YearColumn.SPROUT_LEAF_AREA_M2, state.year, state.sprouts.leafAreaM2());
  }

  /**
   * A living or just dead tree at the end of a year; leaf area as in late summer, reserve as in
   * autumn.
   */
  static void year(History history, YearContext context, double woodCarbon) {
    TreeState state = context.state;
    CarbonLedger ledger = context.ledger;
    common(history, state, woodCarbon);
    int year = state.year;
    history.set(YearColumn.GPP_KG_C, year, ledger.amountKgC(Flow.ASSIMILATION));
    history.set(YearColumn.MAINTENANCE_KG_C, year, ledger.amountKgC(Flow.MAINTENANCE));
    history.set(YearColumn.GROWTH_KG_C, year, ledger.builtKgC());
    if (state.vitality.alive) {
      history.set(YearColumn.LEAF_AREA_M2, year, context.summerLeafAreaM2);
      history.set(YearColumn.SPROUT_LEAF_AREA_M2, year, context.summerSproutLeafAreaM2);
      history.set(YearColumn.RESERVE_KG_C, year, context.autumnReserveKgC);
      history.set(YearColumn.RESERVE_FRACTION, year, context.autumnReserveFraction);
    }
  }

  /** Every row after death: what stands keeps its size; nothing lives. */
  static void afterDeath(History history, int deathYear, int years) {
    for (int year = deathYear + 1; year <= years; year++) {
      for (YearColumn column : KEPT) {
        history.set(column, year, history.value(column, deathYear));
      }
    }
  }

  private static final YearColumn[] KEPT = {
    YearColumn.DEADWOOD_KG,
    YearColumn.DBH_CM,
    YearColumn.HEIGHT_M,
    YearColumn.OPEN_WOUND_CM2,
    YearColumn.DECAY_AREA_FRACTION,
    YearColumn.STRENGTH_LOSS_FRACTION,
    YearColumn.WALL_RATIO
  };

  private static void common(History history, TreeState state, double woodCarbon) {
    int year = state.year;
    Vitality vitality = state.vitality;
    history.set(YearColumn.DBH_CM, year, CM * state.trunk.dbhM());
    double heightM = state.heightM();
    history.set(YearColumn.HEIGHT_M, year, heightM);
    history.set(YearColumn.DEADWOOD_KG, year, state.limbs.deadWoodKgC() / woodCarbon);
    history.set(YearColumn.OPEN_WOUND_CM2, year, CM2 * state.wounds.openAreaM2());
    history.set(YearColumn.DECAY_AREA_FRACTION, year, vitality.worstDecayAreaFraction);
    history.set(YearColumn.STRENGTH_LOSS_FRACTION, year, vitality.worstStrengthLoss);
    history.set(YearColumn.WALL_RATIO, year, vitality.worstWallRatio);
    if (vitality.alive) {
      history.set(YearColumn.RESERVE_KG_C, year, state.pools.reserveKgC);
      history.set(YearColumn.RESERVE_FRACTION, year, state.pools.reserveFraction());
      history.set(YearColumn.SPROUT_COUNT, year, state.sprouts.count());
      history.set(YearColumn.LIVE_CROWN_RATIO, year, state.liveCrownRatio(heightM));
      history.set(YearColumn.FAILURE_PROBABILITY, year, vitality.failureProbability);
      history.set(YearColumn.ALIVE, year, 1);
    }
  }

  /** One row for each wound on the trunk. */
  static List<WoundRow> wounds(TreeState state) {
    Wounds wounds = state.wounds;
    List<WoundRow> rows = new ArrayList<>();
    for (int w = 0; w < wounds.count; w++) {
      if (wounds.limb[w] == Wounds.ON_TRUNK) {
        rows.add(
            new WoundRow(
                w,
                wounds.year[w],
                wounds.heightM[w],
                wounds.cutDiameterM[w],
                PLACEMENTS[wounds.placement[w]],
                wounds.closedYear[w],
                wounds.columnUpM[w],
                wounds.columnDownM[w],
                wounds.columnDepthM[w],
                wounds.parentRadiusM[w]));
      }
    }
    return rows;
  }
}
