package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.Flow;
import longbough.model.history.TreeEvent;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SheddingParameters;
import longbough.model.pruning.Placement;
import longbough.model.state.CrownFrame;
import longbough.model.state.LimbStatus;
import longbough.model.state.Limbs;
import longbough.model.state.TipState;
import longbough.model.state.TreeState;
import longbough.model.state.Wounds;

/**
 * Limbs that don't pay their way die; dead ones fall after some years.
 *
 * <pre>
 * net_i = sum_z y_z L_z - rs W_i - f y L_i;   dead after n years with net < 0, or with L_i < l h A_i
 * n = n0 + (n1 - n0) s
 * chance of a headed limb to die back = b h_i (1 - L_i / P_i) a year
 * chance of falling = 1 - (1 - 1/T) a year
 * B' = max(B, min(Bs, H - l))
 * </pre>
 *
 * y net return of a zone's leaves (kg C m-2 a year), L leaf area (m2), W wood (kg C), rs
 * respiration of sapwood; y without index its mean over the crown and f the share of it that a
 * limb's leaves must return to be given wood: a limb is ranked against the others of its tree, so
 * that one in the shade of its own crown dies at a light at which one of a suppressed tree lives
 * on; h A leaf area that the limb's base could support (m2); n years of patience, between n0 of a
 * light-demanding and n1 of a fully shade-tolerant species by its shade tolerance s (0..1): such a
 * limb lives on what it has and makes no rings (rings see its hungry years); a headed limb, whose
 * buds are gone, waits n0 years only; T years that the species holds its deadwood. Above a number
 * of limbs the weakest is given up each year: the least leaf over what its base could carry plus
 * its height over the tree's, so low limbs go first. A falling limb leaves a short stub, which
 * holds the wound open, but opens no living wood: the trunk has sealed it off at the branch's base.
 * B base of the crown's outline (m), by which limbs grow in length, l its length in the year before
 * and H the tree's height (m), Bs the height of the lowest limb that shade has left (m): the
 * outline follows the limbs that shade takes as fast as the top grows, so that a crown that recedes
 * keeps its form. Source: branches at the lower edge of Douglas-fir crowns lived 24 (4-72) years,
 * the last 8 (0-49) of them without rings that a lens could show, Can. J. For. Res. 20:1690, 1990;
 * the ranking Sprugel 2002; the other numbers are assumptions.
 */
public final class Shedding implements Process {
  /** What a limb's leaves must return in this year of this tree, kg C m-2. */
  private double leastReturnKgCM2;

  @Override
  public String name() {
    return "shedding";
  }

  @Override
  public List<String> sources() {
    return List.of("cjfr1990", "sprugel2002");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.LIMBS, StatePart.FOLIAGE, StatePart.SPROUTS, StatePart.WOUNDS);
  }

  @Override
  public void run(YearContext context) {
    Limbs limbs = context.state.limbs;
    ModelParameters p = context.parameters;
    int living = 0;
    int weakest = -1;
    double least = Double.MAX_VALUE;
    leastReturnKgCM2 = p.shedding().returnLeast() * Math.max(0, meanReturnKgCM2(limbs));
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb)) {
        living++;
        if (!hungry(context, limb) && young(context.state, limb)) {
          continue;
        }
        double standing = leafShare(context.state, limb) + heightShare(context.state, limb);
        if (standing < least) {
          least = standing;
          weakest = limb;
        }
      }
    }
    double base = context.state.crownBaseM();
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb) && limbs.hungryYears[limb] >= patienceYears(p, limbs, limb)) {
        kill(context, limb);
        living--;
      }
    }
    if (living > p.shedding().crowdedLimbs() && weakest >= 0 && limbs.alive(weakest)) {
      kill(context, weakest);
    }
    recede(context.state, base);
    fall(context);
    dieBack(context);
  }

  /**
   * Where shade has taken the lowest limbs, the crown's outline follows as fast as the top grows:
   * it keeps its length.
   */
  private static void recede(TreeState state, double beforeM) {
    CrownFrame frame = state.frame;
    double top = state.trunk.heightM;
    double base = state.crownBaseM();
    if (base > beforeM && base < top) {
      frame.shadedBaseM = Math.max(frame.shadedBaseM, base);
    }
    double risen = Math.min(frame.shadedBaseM, top - frame.crownLengthM);
    frame.crownBaseM = Math.max(frame.crownBaseM, risen);
    frame.crownLengthM = top - frame.crownBaseM;
  }

  /** Headed limbs dry out from the cut as far as no leaf draws on their pipes; some die. */
  private static void dieBack(YearContext context) {
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    for (int limb = 0; limb < limbs.count; limb++) {
      if (limbs.alive(limb) && limbs.tip[limb] == TipState.HEADED.code()) {
        double served = limbs.servedLeafM2[limb];
        double leaf = limbs.leafAreaM2(limb) + state.sprouts.leafAreaM2[limb];
        double idle = served > 0 ? Math.max(0, 1 - leaf / served) : 0;
        double fresh = context.parameters.shedding().headedDieback() * limbs.headingStimulus[limb];
        if (context.random.uniform() < fresh * idle) {
          kill(context, limb);
        }
      }
    }
  }

  /** Net return of a square metre of leaf, mean over the crown, kg C m-2. */
  private static double meanReturnKgCM2(Limbs limbs) {
    double sum = 0;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      sum += limbs.leafReturnKgCM2[zone] * limbs.leafAreaM2[zone];
    }
    double leaf = limbs.leafAreaM2();
    return leaf > 0 ? sum / leaf : 0;
  }

  /** A headed limb has lost the buds it could wait with: it is given up as early as any. */
  private static double patienceYears(ModelParameters p, Limbs limbs, int limb) {
    boolean whole = limbs.tip[limb] == TipState.INTACT.code();
    return p.shedding().patienceYears(whole ? p.species().shadeTolerance() : 0);
  }

  private boolean hungry(YearContext context, int limb) {
    Limbs limbs = context.state.limbs;
    ModelParameters p = context.parameters;
    double net =
        -leastReturnKgCM2 * limbs.leafAreaM2(limb)
            - p.carbon().sapwoodRespiration(p.species())
                * p.reserve().branchLivingShare()
                * limbs.woodKgC[limb];
    for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
      net += limbs.leafReturnKgCM2[zone] * limbs.leafAreaM2[zone];
    }
    boolean bare =
        leafShare(context.state, limb) < p.shedding().leafShareLeast()
            && context.state.sprouts.count[limb] < 1;
    boolean hungry = (net < 0 || bare) && !young(context.state, limb);
    limbs.hungryYears[limb] = hungry ? limbs.hungryYears[limb] + 1 : 0;
    return hungry;
  }

  /** Height of a limb above the ground over the trunk's: overtopped limbs are given up first. */
  private static double heightShare(TreeState state, int limb) {
    return state.limbs.heightM[limb] / Math.max(1, state.trunk.heightM);
  }

  private static boolean young(TreeState state, int limb) {
    return state.year - state.limbs.birthYear[limb] < YOUNG_YEARS;
  }

  /** Leaf area over what the limb's base could carry. */
  private static double leafShare(TreeState state, int limb) {
    double d = state.limbs.baseDiameterM[limb];
    double supported = state.frame.leafPerWoodM2M2 * Math.PI / 4 * d * d;
    return supported > 0
        ? (state.limbs.leafAreaM2(limb) + state.sprouts.leafAreaM2[limb]) / supported
        : 0;
  }

  private static void kill(YearContext context, int limb) {
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    for (int zone = limb * Limbs.ZONES; zone < (limb + 1) * Limbs.ZONES; zone++) {
      context.ledger.book(Flow.LEAF_LITTER, limbs.leafKgC[zone]);
    }
    limbs.clearFoliage(limb);
    context.ledger.book(Flow.LEAF_LITTER, state.sprouts.leafKgC[limb]);
    context.ledger.book(Flow.SHED_WOOD, state.sprouts.woodKgC[limb]);
    state.sprouts.clearShoots(limb);
    state.sprouts.budBank[limb] = 0;
    limbs.status[limb] = LimbStatus.DEAD.code();
    limbs.deathYear[limb] = state.year;
    limbs.headingStimulus[limb] = 0;
    context.light.stale = true;
    if (context.events.on()) {
      context.events.add(
          new TreeEvent.LimbDied(state.year, limbs.heightM[limb], limbs.baseDiameterM[limb]));
    }
  }

  private static void fall(YearContext context) {
    TreeState state = context.state;
    Limbs limbs = state.limbs;
    double chance = 1 / Math.max(1, context.parameters.species().deadwoodRetentionYears());
    for (int limb = 0; limb < limbs.count; limb++) {
      boolean dead =
          limbs.status[limb] == LimbStatus.DEAD.code()
              || limbs.status[limb] == LimbStatus.STUB.code();
      double draw = context.random.uniform();
      if (dead && draw < chance && limbs.deathYear[limb] < state.year) {
        context.ledger.book(Flow.SHED_WOOD, limbs.woodKgC[limb]);
        if (limbs.status[limb] == LimbStatus.DEAD.code()) {
          wound(context.parameters.shedding(), state, limb);
        }
        limbs.clear(limb);
      }
    }
  }

  private static void wound(SheddingParameters p, TreeState state, int limb) {
    Wounds wounds = state.wounds;
    Limbs limbs = state.limbs;
    int w = wounds.add();
    double diameter = limbs.baseDiameterM[limb];
    wounds.year[w] = state.year;
    wounds.month[w] = 1;
    wounds.placement[w] = (byte) Placement.STUB.ordinal();
    wounds.heightM[w] = limbs.heightM[limb];
    wounds.azimuthRad[w] = limbs.azimuthRad[limb];
    wounds.cutDiameterM[w] = diameter;
    wounds.faceWidthM[w] = diameter;
    wounds.faceHeightM[w] = diameter;
    wounds.openWidthM[w] = diameter;
    wounds.openHeightM[w] = diameter;
    double atDeath = state.trunk.radiusInYearM(limbs.heightM[limb], limbs.deathYear[limb]);
    wounds.parentRadiusM[w] = Math.max(diameter / 2, atDeath);
    wounds.sealed[w] = true;
    wounds.stubM[w] = p.shedStubM();
  }

  private static final int YOUNG_YEARS = 5;
}
