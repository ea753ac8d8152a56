package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.state.Pools;
import longbough.model.state.TreeState;

/**
 * Old sapwood turns to heartwood, so that sapwood keeps the species' depth.
 *
 * <pre>
 * depth = R40 (1 - sqrt(1 - s40)) sqrt(R / R40),   share = 1 - (1 - min(1, depth / R))^2
 * </pre>
 *
 * R radius at breast height (m), R40 = 0.20 m; s40 the species' sapwood share at 40 cm dbh.
 * Heartwood never turns back. Source: sapwood shares from SCBI ForestGEO sapwood depths (see the
 * species files); the square root in size is an assumption.
 */
public final class Heartwood implements Process {
  private static final double REFERENCE_RADIUS_M = 0.20;

  @Override
  public String name() {
    return "heartwood";
  }

  @Override
  public List<String> sources() {
    return List.of("scbi2018");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.TRUNK, StatePart.POOLS);
  }

  @Override
  public void run(YearContext context) {
    apply(context.state, context.parameters);
  }

  /** Sets the sapwood share and moves wood that is now heartwood. */
  public static void apply(TreeState state, ModelParameters p) {
    double share = sapwoodShare(p.species(), state.trunk.dbhM() / 2);
    state.trunk.sapwoodShare = share;
    Pools pools = state.pools;
    double sapwood = share * (pools.trunkSapwoodKgC + pools.trunkHeartwoodKgC);
    double turned = Math.max(0, pools.trunkSapwoodKgC - sapwood);
    pools.trunkSapwoodKgC -= turned;
    pools.trunkHeartwoodKgC += turned;
  }

  static double sapwoodShare(SpeciesParameters s, double radiusM) {
    double depth =
        REFERENCE_RADIUS_M
            * (1 - Math.sqrt(1 - s.sapwoodShareReference()))
            * Math.sqrt(radiusM / REFERENCE_RADIUS_M);
    double heart = 1 - Math.min(1, depth / radiusM);
    return 1 - heart * heart;
  }
}
