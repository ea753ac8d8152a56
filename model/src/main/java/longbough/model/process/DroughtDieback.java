package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.ModelParameters;
import longbough.model.state.Limbs;

/**
 * Twigs and buds that a drought kills or keeps from forming: fewer leaves in the years after it.
 *
 * <pre>
 * b' = b (1 - k max(0, x - u)^2),   u' = u + (x - u) / y
 * </pre>
 *
 * b bud fullness (1); x share of assimilation that the driest month in leaf took (1), u what it
 * usually takes, over y years: a tree of a dry place is used to it; k share of the twigs lost where
 * a drought without precedent took all, less in conifers. Twigs and buds return as after other
 * losses ({@link CrownPotential}), so that growth stays low for some years after a severe drought
 * and hardly at all after a mild one. What a drought does for good to roots and sapwood see {@link
 * Decline}. Source: crowns thin out in the year after the drought (Seidling 2007), and recover
 * later; how much in beech after 2018, Frei et al. 2022; the square is an assumption.
 */
public final class DroughtDieback implements Process {

  @Override
  public String name() {
    return "drought dieback";
  }

  @Override
  public List<String> sources() {
    return List.of("seidling2007", "frei2022");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.FOLIAGE);
  }

  @Override
  public void run(YearContext context) {
    ModelParameters p = context.parameters;
    double drought = 1 - context.worstWater;
    double unusual = Math.max(0, drought - context.usualDrought);
    context.usualDrought += (drought - context.usualDrought) / p.allocation().ringMemoryYears();
    if (unusual == 0) {
      return;
    }
    boolean conifer = p.species().conifer();
    double most = conifer ? p.decline().droughtTwigsConifer() : p.decline().droughtTwigs();
    double kept = 1 - most * unusual * unusual;
    Limbs limbs = context.state.limbs;
    for (int zone = 0; zone < limbs.count * Limbs.ZONES; zone++) {
      limbs.budFullness[zone] *= kept;
    }
  }
}
