package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.history.TreeEvent;
import longbough.model.parameter.SurvivalParameters;
import longbough.model.state.CauseOfDeath;
import longbough.model.state.TreeState;
import longbough.model.state.Vitality;

/**
 * Bark beetles take conifers that make hardly any wood.
 *
 * <pre>
 * p = hb s,   s = max(0, 1 - i / (i0 h))
 * </pre>
 *
 * p chance of dying of an attack this year; hb that of a tree whose rings have stopped; s how far
 * the widest i of the last rings falls short of the share i0 of their habit h ({@link Vigour}),
 * that of trees about to die: wood and resin are made of the same sugar, so that rings tell what a
 * tree can spend on defence. Beetles struck pines that had lost nine tenths of their needles and
 * more, most of them in the second year. Broadleaves' borers and root rot are in {@link Decline}.
 * The random number is the same for every regime of one future. Source: resistance by sugar and
 * stemwood Christiansen et al. 1987; which pines were struck Cedervind et al. 2003; severely pruned
 * pines killed by half as many inoculations of the beetles' fungi Solheim et al. 1993; the form and
 * hb are assumptions.
 */
public final class BarkBeetles implements Process {

  @Override
  public String name() {
    return "bark beetles";
  }

  @Override
  public List<String> sources() {
    return List.of("christiansen1987", "cedervind2003", "solheim1993");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.VITALITY);
  }

  @Override
  public void run(YearContext context) {
    TreeState state = context.state;
    Vitality vitality = state.vitality;
    if (!vitality.alive || !context.parameters.species().conifer()) {
      return;
    }
    SurvivalParameters p = context.parameters.survival();
    double stunted =
        Vigour.longStunted(context.parameters.decline(), state.trunk, p.beetleGrowth());
    if (context.random.uniform() < p.beetleHazard() * stunted) {
      vitality.alive = false;
      vitality.deathYear = state.year;
      vitality.cause = CauseOfDeath.INSECTS;
      if (context.events.on()) {
        context.events.add(new TreeEvent.Died(state.year, vitality.cause));
      }
    }
  }
}
