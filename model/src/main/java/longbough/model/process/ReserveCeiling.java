package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Organ;
import longbough.model.state.Stores;
import longbough.model.state.TreeState;

/**
 * How much reserve the living wood can hold, and how much of it can't be mobilised.
 *
 * <pre>
 * C = (cs / cw) k (xb B + xs S + xr R + xl N),   floor = f C
 * </pre>
 *
 * Each organ has its own part of it. B, S, R carbon in living branch, stem and root wood (kg C), N
 * in leaves, which count in evergreens only: what deciduous leaves hold goes back into the wood
 * before they fall; x late-season concentration of non-structural carbohydrate in it (share of dry
 * mass), k how far a full store lies above that; cs, cw carbon share of sugar and of dry wood.
 * Source: concentrations by organ from Ramirez et al. 2024; floor see Barker Plotkin et al. 2021.
 */
public final class ReserveCeiling implements Process {

  @Override
  public String name() {
    return "reserve ceiling";
  }

  @Override
  public List<String> sources() {
    return List.of("ramirez2024", "barker2021");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.RESERVE);
  }

  @Override
  public void run(YearContext context) {
    set(context.state, context.parameters);
  }

  /** Sets ceiling and floor for a tree as it stands. */
  public static void set(TreeState state, ModelParameters p) {
    SpeciesParameters s = p.species();
    double branches = state.livingBranchKgC(p.reserve().branchLivingShare());
    double stem = p.reserve().stemMax(s, state.trunk.dbhM() / 2, state.trunk.sapwoodShare);
    double rootShare = Math.max(p.reserve().rootLivingShare(), state.trunk.sapwoodShare);
    double dryToSugar = p.carbon().sugarCarbon() / p.carbon().woodCarbon();
    double full = dryToSugar * p.reserve().ceilingFactor();
    double leaf = p.reserve().leafCeilingKgC(p, state.leafKgC());
    double branch = full * s.reserveBranchMax() * branches;
    double stemMost = full * stem * state.pools.trunkSapwoodKgC;
    double root = full * s.reserveRootMax() * rootShare * state.pools.coarseRootKgC;
    Stores stores = state.pools.stores;
    stores.ceiling(Organ.LEAF, leaf);
    stores.ceiling(Organ.BRANCH, branch);
    stores.ceiling(Organ.STEM, stemMost);
    stores.ceiling(Organ.ROOT, root);
    state.pools.reserveCeilingKgC = (s.evergreen() ? leaf : 0) + branch + stemMost + root;
    state.pools.reserveFloorKgC = p.reserve().floor() * state.pools.reserveCeilingKgC;
  }
}
