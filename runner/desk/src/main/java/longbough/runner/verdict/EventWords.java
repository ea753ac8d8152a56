package longbough.runner.verdict;

import longbough.model.history.TreeEvent;

/** One event as a short phrase. */
final class EventWords {
  private static final double CM = 100;

  private EventWords() {}

  static String of(TreeEvent event) {
    if (event instanceof TreeEvent.Pruned pruned) {
      return pruned(pruned);
    } else if (event instanceof TreeEvent.Drought drought) {
      return "drought (" + Figures.percent(drought.waterShare()) + " of the water needed)";
    } else if (event instanceof TreeEvent.Defoliated eaten) {
      return "insects took " + Figures.percent(eaten.share()) + " of the leaves";
    } else if (event instanceof TreeEvent.Frosted frost) {
      return "late frost killed " + Figures.percent(frost.share()) + " of the new leaves";
    } else if (event instanceof TreeEvent.LimbBroken broken) {
      return broken.sproutUnion()
          ? "a sprout grown limb tore out (" + cm(broken.diameterM()) + ")"
          : "wind broke a limb (" + cm(broken.diameterM()) + ")";
    } else if (event instanceof TreeEvent.ReserveLow low) {
      return "reserve low (" + Figures.percent(low.fraction()) + " of its ceiling)";
    } else if (event instanceof TreeEvent.ReserveRecovered back) {
      return "reserve recovered (" + Figures.percent(back.fraction()) + ")";
    } else if (event instanceof TreeEvent.Sprouted sprouted) {
      return Math.round(sprouted.count()) + " new sprouts";
    } else if (event instanceof TreeEvent.LimbDied limb) {
      return "a limb died ("
          + cm(limb.diameterM())
          + ", at "
          + Figures.number(limb.heightM())
          + "\u00a0m)";
    } else if (event instanceof TreeEvent.WoundClosed wound) {
      return "a wound closed (cut of "
          + cm(wound.cutDiameterM())
          + ", after "
          + wound.ageYears()
          + " years)";
    } else if (event instanceof TreeEvent.DecayReached decay) {
      return "decay cost the trunk "
          + Figures.percent(decay.strengthLoss())
          + " of its strength at "
          + Figures.number(decay.heightM())
          + "\u00a0m";
    } else if (event instanceof TreeEvent.Died died) {
      return "the tree died (" + died.cause().label() + ")";
    }
    throw new IllegalArgumentException("no words for " + event.getClass().getSimpleName());
  }

  private static String pruned(TreeEvent.Pruned pruned) {
    String done = OperationWords.done(pruned.operation());
    if (!(pruned.foliageRemovedFraction() > 0)) {
      return done;
    }
    return done
        + " ("
        + Figures.percent(pruned.foliageRemovedFraction())
        + " of the foliage, largest cut "
        + cm(pruned.largestCutM())
        + ")";
  }

  private static String cm(double metres) {
    return Figures.number(CM * metres) + "\u00a0cm";
  }
}
