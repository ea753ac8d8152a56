package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.numeric.Fast;
import longbough.model.parameter.DecayParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.pruning.Placement;
import longbough.model.state.Wounds;

/**
 * Decay spreads from each wound at its own rate along, into and round the wood that stood when it
 * was made (compartmentalization of decay in trees, CODIT).
 *
 * <p>Each extent L (m) moves towards a limit L∞ by dL/dt = (L∞ - L) / τ while the sapwood reacts
 * (some ten years; an older wound met for the first time makes up for its years), and creeps on by
 * h (1 - durability) (m a year) once heartwood is reached:
 *
 * <pre>
 * L∞(axial)      = face/2 + d (b + a · S)          a by species class, b dieback at the rim
 * L∞(radial)     = d c + ρ · d · a · S             ρ below 1: wall 2 holds better than wall 1
 * L∞(tangential) = face/2 + θ · d · a · S          θ below ρ: wall 3 holds better than wall 2
 * S = (d / d1)^p · (q / q1)^r · placement · (1 + e (1 - f / f1)),  each ratio at least 1
 * </pre>
 *
 * with d cut diameter (for a flush cut its wider face, m), d1 the species' size limit (m), q branch
 * over parent diameter, q1 its limit, f reserve over its ceiling: the reaction zone is paid from
 * the reserve. Depth never passes the radius at wounding (wall 4, the barrier zone); a collar cut
 * within both limits (a stub: within a share of them) stays in the branch core; a closed wound's
 * column nearly stops; a cut across the stem decays downwards over the section.
 */
public final class Compartmentalization implements Process {
  private static final byte FLUSH = (byte) Placement.FLUSH.ordinal();
  private static final byte STUB = (byte) Placement.STUB.ordinal();

  /** A column this near its limit has reached it. */
  private static final double REACHED = 0.98;

  @Override
  public String name() {
    return "compartmentalization";
  }

  @Override
  public List<String> sources() {
    return List.of(
        "shigo1977",
        "shigo1983",
        "dujesiefken2002",
        "eisner2002",
        "santamour1987",
        "vasiliauskas1998",
        "vasiliauskas-spruce",
        "heartrot");
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
    DecayParameters p = context.parameters.decay();
    double reserve = Math.min(1, context.state.pools.reserveFraction() / p.reserveFullFraction());
    double approach = 1 - Fast.exp(-1 / p.saturationYears());
    double sapwoodShare = context.state.trunk.sapwoodShare;
    double heartRadiusShare = Math.sqrt(Math.max(0, 1 - sapwoodShare));
    for (int w = 0; w < wounds.count; w++) {
      if (!wounds.confined[w]) {
        spread(context, w, reserve, approach, heartRadiusShare);
      }
    }
  }

  private static void spread(
      YearContext context, int w, double reserve, double approach, double heartShare) {
    Wounds wounds = context.state.wounds;
    DecayParameters p = context.parameters.decay();
    SpeciesParameters species = context.parameters.species();
    if (!(wounds.parentRadiusM[w] > 0)) {
      wounds.confined[w] = true;
      return;
    }
    int age = Math.max(0, context.state.year - wounds.year[w]);
    double years = wounds.columnDownM[w] > 0 ? 1 : Math.max(1, Math.min(age, p.reactionYears()));
    start(wounds, w, p);
    double yearly = years == 1 ? approach : 1 - Fast.exp(-years / p.saturationYears());
    if (heldInCore(wounds, w, p, species, reserve)) {
      growInCore(wounds, w, p, yearly);
      return;
    }
    double d = decayingDiameterM(wounds, w);
    boolean reacting = age <= p.reactionYears() || years > 1;
    // A column that only creeps on in heartwood has no limit to move towards.
    double reach =
        reacting
            ? d
                * p.axialPerCut(species.compartmentClass())
                * severity(wounds, w, d, p, species, reserve)
            : 0;
    double speed = wounds.open(w) ? 1 : p.closedFactor();
    boolean inHeart = inHeartwood(wounds, w, heartShare);
    double creep = inHeart ? years * speed * (1 - species.heartwoodDurability()) : 0;
    grow(context, w, reach, d, reacting ? yearly * speed : 0, creep);
    wounds.confined[w] = !inHeart && age >= p.reactionYears();
  }

  // Dieback at the rim and drying of the face: what every wound has from its first year.
  private static void start(Wounds wounds, int w, DecayParameters p) {
    double d = wounds.cutDiameterM[w] > 0 ? wounds.cutDiameterM[w] : wounds.faceWidthM[w];
    double axial = wounds.faceHeightM[w] / 2 + d * p.startAxialPerCut();
    wounds.columnUpM[w] = Math.max(wounds.columnUpM[w], wounds.acrossStem[w] ? 0 : axial);
    wounds.columnDownM[w] = Math.max(wounds.columnDownM[w], axial);
    double depth = Math.min(wounds.parentRadiusM[w], d * p.startDepthPerCut());
    wounds.columnDepthM[w] = Math.max(wounds.columnDepthM[w], depth);
    double half =
        wounds.acrossStem[w] ? Math.PI * wounds.parentRadiusM[w] : startHalfWidthM(wounds, w);
    wounds.columnHalfWidthM[w] = Math.max(wounds.columnHalfWidthM[w], half);
  }

  // The branch core is as wide as the branch; without a branch the wound is as wide as its face.
  private static double startHalfWidthM(Wounds wounds, int w) {
    double width =
        wounds.placement[w] != FLUSH && wounds.cutDiameterM[w] > 0
            ? wounds.cutDiameterM[w]
            : wounds.faceWidthM[w];
    return Math.min(Math.PI * wounds.parentRadiusM[w], width / 2);
  }

  /** A cut within the size and ratio limits, not flush, on a tree that can pay for its walls. */
  static boolean heldInCore(
      Wounds wounds, int w, DecayParameters p, SpeciesParameters species, double reserve) {
    double d = wounds.cutDiameterM[w];
    double held = wounds.placement[w] == STUB ? reserve * p.stubCoreShare() : reserve;
    return d > 0
        && BranchCore.confines(wounds, w)
        && d <= species.cutLimitM() * held
        && d <= 2 * wounds.parentRadiusM[w] * species.branchParentRatioLimit() * held;
  }

  private static void growInCore(Wounds wounds, int w, DecayParameters p, double approach) {
    double d = wounds.cutDiameterM[w];
    double axial = (wounds.faceHeightM[w] / 2 + d * p.startAxialPerCut()) * p.coreGrowthShare();
    double depth =
        Math.min(wounds.parentRadiusM[w], d * p.startDepthPerCut() * p.coreGrowthShare());
    wounds.columnUpM[w] = towards(wounds.columnUpM[w], axial, approach);
    wounds.columnDownM[w] = towards(wounds.columnDownM[w], axial, approach);
    wounds.columnDepthM[w] = towards(wounds.columnDepthM[w], depth, approach);
    wounds.confined[w] =
        wounds.columnUpM[w] >= REACHED * axial && wounds.columnDepthM[w] >= REACHED * depth;
  }

  /** Size of the wound as decay meets it: a flush cut opens its whole face, m. */
  private static double decayingDiameterM(Wounds wounds, int w) {
    double d = wounds.cutDiameterM[w];
    return wounds.placement[w] == FLUSH || d <= 0 ? Math.max(d, wounds.faceWidthM[w]) : d;
  }

  private static double severity(
      Wounds wounds,
      int w,
      double d,
      DecayParameters p,
      SpeciesParameters species,
      double reserve) {
    double size = Math.max(1, d / species.cutLimitM());
    double ratio =
        Math.max(1, d / (2 * wounds.parentRadiusM[w]) / species.branchParentRatioLimit());
    double placed = placementFactor(wounds, w, p);
    double weak = 1 + p.lowReserveGain() * (1 - reserve);
    return Math.min(
        p.severityMax(),
        power(size, p.sizeExponent()) * power(ratio, p.ratioExponent()) * placed * weak);
  }

  // Most cuts lie within the limits, where no power need be taken.
  private static double power(double base, double exponent) {
    return base == 1 || exponent == 1 ? base : Fast.pow(base, exponent);
  }

  private static double placementFactor(Wounds wounds, int w, DecayParameters p) {
    if (wounds.acrossStem[w]) {
      return p.acrossStemFactor();
    }
    if (wounds.placement[w] == FLUSH) {
      return p.flushFactor();
    }
    return wounds.placement[w] == STUB ? p.stubFactor() : 1;
  }

  private static boolean inHeartwood(Wounds wounds, int w, double heartShare) {
    double sapwoodM = wounds.parentRadiusM[w] * (1 - heartShare);
    return heartShare > 0 && (wounds.heartwood[w] || wounds.columnDepthM[w] > sapwoodM);
  }

  private static void grow(
      YearContext context, int w, double reach, double d, double approach, double creep) {
    Wounds wounds = context.state.wounds;
    DecayParameters p = context.parameters.decay();
    double radius = wounds.parentRadiusM[w];
    double axialLimit = wounds.faceHeightM[w] / 2 + d * p.startAxialPerCut() + reach;
    double axialCreep = creep * p.heartAxialMPerYear() / 2;
    double along = alongM(context, w);
    double above = wounds.acrossStem[w] ? 0 : Math.max(0, along - wounds.heightM[w]);
    double below = wounds.limb[w] == Wounds.ON_TRUNK ? wounds.heightM[w] : along;
    wounds.columnUpM[w] = bounded(wounds.columnUpM[w], axialLimit, approach, axialCreep, above);
    wounds.columnDownM[w] = bounded(wounds.columnDownM[w], axialLimit, approach, axialCreep, below);
    double depthLimit =
        wounds.acrossStem[w] ? radius : d * p.startDepthPerCut() + reach * p.radialPerAxial();
    wounds.columnDepthM[w] =
        bounded(
            wounds.columnDepthM[w], depthLimit, approach, creep * p.heartRadialMPerYear(), radius);
    double halfLimit = wounds.faceWidthM[w] / 2 + reach * p.tangentialPerAxial();
    wounds.columnHalfWidthM[w] =
        bounded(
            wounds.columnHalfWidthM[w],
            halfLimit,
            approach,
            creep * p.heartTangentialMPerYear(),
            Math.PI * radius);
  }

  // Length of wood that a column can run in, m.
  private static double alongM(YearContext context, int w) {
    int limb = context.state.wounds.limb[w];
    return limb == Wounds.ON_TRUNK
        ? context.state.trunk.heightM
        : context.state.wounds.heightM[w] + context.state.limbs.lengthM[limb];
  }

  private static double towards(double value, double limit, double approach) {
    return limit > value ? value + (limit - value) * approach : value;
  }

  // Nothing ever shrinks; a bound below the present extent merely stops it.
  private static double bounded(
      double value, double limit, double approach, double creep, double bound) {
    return Math.max(value, Math.min(bound, towards(value, limit, approach) + creep));
  }
}
