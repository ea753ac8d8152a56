package longbough.model.tree;

import longbough.model.geometry.Allometry;
import longbough.model.parameter.ModelParameters;
import longbough.model.parameter.SpeciesParameters;
import longbough.model.process.LeafRoom;
import longbough.model.state.CrownFrame;
import longbough.model.state.TreeState;

/**
 * How much denser with leaf a mean open-grown crown of the species would be were it lit throughout,
 * by trunk diameter. Measured leaf areas are those that the crown's own shade has left, and large
 * crowns shade themselves more: without this a growing tree would be thinned by its shade twice,
 * once in the measurements and once in the model.
 *
 * <pre>
 * o(d):   sum_z o(d) La(d) / (Ka^2 Ha) V q_z fit(E_z) = La(d),   E by the leaves themselves
 * </pre>
 *
 * for diameters d each twice the last; terms as in {@link longbough.model.process.CrownPotential}.
 */
final class OpenCrowns {

  private OpenCrowns() {}

  static void set(CrownFrame frame, ModelParameters p) {
    SpeciesParameters s = p.species();
    double dbhM = CrownFrame.OPEN_FIRST_M;
    for (int size = 0; size < CrownFrame.OPEN_SIZES; size++) {
      TreeState state = new TreeState();
      MeasuredTree tree = MeasuredTree.openGrown(s, dbhM, 1);
      state.frame.crownBaseM = tree.crownBaseM();
      TrunkProfile.provisional(state, tree);
      LimbLayout.reconstruct(state, tree, p);
      LeafRoom.settle(state, p, 1, Allometry.leafAreaM2(s, dbhM));
      frame.openLeafFactor[size] = state.frame.leafFactor;
      dbhM *= 2;
    }
  }
}
