package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.TreeEvent;
import longbough.model.numeric.Fast;
import longbough.model.parameter.WoundParameters;
import longbough.model.pruning.Placement;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;

/**
 * Woundwood rolls in from the rim of each open wound.
 *
 * <p>Width closed in a year, both sides together (m):
 *
 * <pre>C = C0 · v · (w / w0)^k · (g / g0)^n · (λ + (1 - λ) min(1, f / f1)) · s / (1 + a / τ)</pre>
 *
 * with C0 (m) the width closed in the first season at ring width g0 (m), v the species' woundwood
 * vigour, w width of the face (m; large wounds close more in a year), g ring width beside the wound
 * (m), n below 1 (relatively more per millimetre in slow trees), f reserve over its ceiling, s the
 * season of the cut (first two years), a age of the wound (years), τ (years). A limb's ring is the
 * trunk's times (limb / trunk diameter)^m. A collar cut closes as an even ring; a flush cut at its
 * sides, hardly at top and bottom; nothing passes a stub, which rots by a fixed length a year while
 * the trunk grows out along it by its ring; wounds of dead limbs stand still and those of limbs
 * that are gone leave the account. What has closed never opens again.
 */
public final class WoundClosure implements Process {
  private static final byte FLUSH = (byte) Placement.FLUSH.ordinal();
  private static final byte EMPTY = LimbStatus.EMPTY.code();
  private static final byte DEAD = LimbStatus.DEAD.code();

  @Override
  public String name() {
    return "wound closure";
  }

  @Override
  public List<String> sources() {
    return List.of(
        "neely1979", "neely1988a", "neely1988c", "tavankar2017", "neely1970", "niemisto2019");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.WOUNDS);
  }

  @Override
  public void run(YearContext context) {
    Wounds wounds = context.state.wounds;
    if (wounds.count == 0 || !context.state.vitality.alive) {
      return;
    }
    double trunkClosureM = trunkClosureM(context);
    for (int w = 0; w < wounds.count; w++) {
      if (wounds.open(w)) {
        close(context, w, trunkClosureM);
      }
    }
  }

  // Width a new wound on the trunk closes in this year, m.
  private static double trunkClosureM(YearContext context) {
    WoundParameters p = context.parameters.wound();
    double relative = ringM(context.state.trunk) / p.closureReferenceRingM();
    if (!(relative > 0)) {
      return 0;
    }
    double reserve = Math.min(1, context.state.pools.reserveFraction() / p.reserveFullFraction());
    return p.closureReferenceM()
        * context.parameters.species().woundwoodVigour()
        * Fast.pow(relative, p.closureRingExponent())
        * (p.reserveLeastShare() + (1 - p.reserveLeastShare()) * reserve);
  }

  private static double ringM(Trunk trunk) {
    if (trunk.rings < 2) {
      return trunk.ringMemoryM;
    }
    return trunk.ringRadiusM[trunk.rings - 1] - trunk.ringRadiusM[trunk.rings - 2];
  }

  private static void close(YearContext context, int w, double trunkClosureM) {
    Wounds wounds = context.state.wounds;
    WoundParameters p = context.parameters.wound();
    if (wounds.limb[w] != Wounds.ON_TRUNK && !onLivingLimb(context, w)) {
      return;
    }
    int age = Math.max(0, context.state.year - wounds.year[w]);
    double size =
        Fast.pow(wounds.faceWidthM[w] / p.closureSizeReferenceM(), p.closureSizeExponent());
    double width =
        trunkClosureM * size * vigourOfPlace(context, w) / (1 + age / p.closureAgeYears());
    if (age <= 1) {
      width *= seasonFactor(p, wounds.month[w]);
    }
    double height = width;
    if (wounds.acrossStem[w]) {
      width *= p.acrossStemFactor();
      height = width;
    } else if (wounds.placement[w] == FLUSH) {
      width *= p.flushSideFactor();
      height *= p.flushEndFactor();
    }
    shrink(context, w, width, height);
  }

  // A limb that fell or was taken off takes its wounds along; a dead one grows no woundwood.
  private static boolean onLivingLimb(YearContext context, int w) {
    Wounds wounds = context.state.wounds;
    Limbs limbs = context.state.limbs;
    int limb = wounds.limb[w];
    if (limbs.status[limb] == EMPTY || limbs.birthYear[limb] > wounds.year[w]) {
      wounds.loseWithLimb(limb, context.state.year);
      return false;
    }
    return limbs.status[limb] != DEAD;
  }

  // Growth beside the wound over growth of the trunk.
  private static double vigourOfPlace(YearContext context, int w) {
    Wounds wounds = context.state.wounds;
    int limb = wounds.limb[w];
    double dbhM = context.state.trunk.dbhM();
    if (limb == Wounds.ON_TRUNK || !(dbhM > 0)) {
      return 1;
    }
    double relative = Math.min(1, context.state.limbs.baseDiameterM[limb] / dbhM);
    WoundParameters p = context.parameters.wound();
    return relative > 0 ? Fast.pow(relative, p.limbRingExponent() * p.closureRingExponent()) : 0;
  }

  /** Woundwood relative to a cut in spring, by month of the cut (1 midwinter). */
  static double seasonFactor(WoundParameters p, int month) {
    if (month == 4 || month == 5) {
      return p.springFactor();
    }
    if (month >= 6 && month <= 8) {
      return p.summerFactor();
    }
    return month >= 9 && month <= 11 ? p.autumnFactor() : p.winterFactor();
  }

  private static void shrink(YearContext context, int w, double widthM, double heightM) {
    Wounds wounds = context.state.wounds;
    double floor = 0;
    if (wounds.stubM[w] > 0) {
      floor = wounds.cutDiameterM[w];
      double overgrown = wounds.limb[w] == Wounds.ON_TRUNK ? ringM(context.state.trunk) : 0;
      double rotted = context.parameters.wound().stubRotMPerYear();
      wounds.stubM[w] = Math.max(0, wounds.stubM[w] - rotted - Math.max(0, overgrown));
    }
    wounds.openWidthM[w] = lessened(wounds.openWidthM[w], widthM, floor);
    wounds.openHeightM[w] = lessened(wounds.openHeightM[w], heightM, floor);
    if (wounds.openWidthM[w] <= 0 || wounds.openHeightM[w] <= 0) {
      finish(context, w);
      if (context.events.on() && wounds.limb[w] == Wounds.ON_TRUNK) {
        int age = context.state.year - wounds.year[w];
        context.events.add(
            new TreeEvent.WoundClosed(context.state.year, wounds.cutDiameterM[w], age));
      }
    }
  }

  private static double lessened(double openM, double byM, double floorM) {
    return Math.min(openM, Math.max(floorM, openM - byM));
  }

  private static void finish(YearContext context, int w) {
    Wounds wounds = context.state.wounds;
    wounds.openWidthM[w] = 0;
    wounds.openHeightM[w] = 0;
    wounds.closedYear[w] = context.state.year;
  }
}
