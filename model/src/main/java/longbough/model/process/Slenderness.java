package longbough.model.process;

import longbough.model.geometry.Allometry;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.TreeState;

/**
 * How slender a stem is, on the way from one grown in the open to one that can't hold itself up.
 *
 * <pre>
 * b = max(0, 1 - (max(0, h - 1) / (hs - 1))^2),   h = hf Ha(dl) / Ha(d)
 * </pre>
 *
 * b how far the stem can still outgrow its thickness (1); h its height over that of an open-grown
 * tree with the same trunk (1), hs that of the slenderest forest trees ({@code
 * allocation.slenderest_height}); Ha allometric height (m), hf this tree's height over it when it
 * was measured (1); d trunk diameter and dl the diameter that goes with the leader (m). The form is
 * our own.
 */
final class Slenderness {

  private Slenderness() {}

  /** How far a stem can still outgrow its thickness: 1 as in the open, 0 as slender as can be. */
  static double upright(ModelParameters p, TreeState state) {
    double slenderest = p.allocation().slenderestHeight();
    double height = Allometry.heightM(p.species(), state.trunk.leaderStatureM());
    double open = Allometry.heightM(p.species(), state.trunk.dbhM());
    double grown = state.frame.heightFactor * height / open;
    double over = Math.max(0, (grown - 1) / (slenderest - 1));
    return Math.max(0, 1 - over * over);
  }
}
