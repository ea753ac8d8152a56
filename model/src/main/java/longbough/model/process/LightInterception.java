package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.parameter.ModelParameters;

/**
 * Keeps the light in the crown up to date: computes {@link LightField} anew when foliage has
 * changed. Source: Monsi M., Saeki T. 1953; spherical geometry; neighbours Vose et al. 1995.
 */
public final class LightInterception implements Process {
  private final LightField field = new LightField();

  @Override
  public String name() {
    return "light";
  }

  @Override
  public List<String> sources() {
    return List.of("monsi1953", "vose1995");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of();
  }

  @Override
  public void run(YearContext context) {
    if (!context.light.stale) {
      return;
    }
    ModelParameters p = context.parameters;
    field.compute(context.state, context.light, p, context.site.openness);
    context.light.stale = false;
  }
}
