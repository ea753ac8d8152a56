package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.geometry.SectionModulus;
import longbough.model.geometry.SectorGrid;
import longbough.model.state.Sections;
import longbough.model.state.Trunk;

/**
 * What decay costs the trunk at each decayed station: share of the area, least sound wood between
 * pith and surface over the radius, and share of the section modulus lost in the weakest direction
 * ({@link SectionModulus}; decayed wood counts for nothing). All shares 0 to 1.
 */
public final class TrunkStrength implements Process {
  private static final SectionModulus SECTION = new SectionModulus(SectorGrid.STANDARD);

  @Override
  public String name() {
    return "trunk strength";
  }

  @Override
  public List<String> sources() {
    return List.of("huang2017");
  }

  @Override
  public Set<StatePart> owns() {
    return Set.of(StatePart.SECTIONS);
  }

  @Override
  public void run(YearContext context) {
    if (!context.state.vitality.alive) {
      return;
    }
    Trunk trunk = context.state.trunk;
    Sections sections = context.state.sections;
    for (int s = 0; s < Trunk.MAX_STATIONS; s++) {
      if (sections.decayed[s] && s < trunk.stations) {
        measure(sections, s, trunk.radiusM[s]);
      } else {
        sections.areaFraction[s] = 0;
        sections.strengthLoss[s] = 0;
        sections.wallRatio[s] = 1;
      }
    }
  }

  private static void measure(Sections sections, int s, double radiusM) {
    int from = s * Sections.SECTORS;
    double[] inner = sections.decayInnerM;
    double[] outer = sections.decayOuterM;
    sections.areaFraction[s] = SECTION.areaFraction(inner, outer, from, radiusM);
    sections.strengthLoss[s] = SECTION.loss(inner, outer, sections.open, from, radiusM);
    sections.wallRatio[s] = SECTION.wallRatio(inner, outer, sections.open, from, radiusM);
  }
}
