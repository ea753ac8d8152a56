package longbough.model.process;

import java.util.List;
import java.util.Set;
import longbough.model.geometry.HollowFailure;
import longbough.model.geometry.SectionModulus;
import longbough.model.geometry.SectorGrid;
import longbough.model.parameter.StrengthParameters;
import longbough.model.state.Sections;
import longbough.model.state.SectorHoles;
import longbough.model.state.Trunk;

/**
 * What decay costs the trunk at each decayed station: share of the area, least sound wood between
 * pith and surface over the radius, and share of the section modulus lost in the weakest direction
 * ({@link SectionModulus}; decayed wood counts for nothing). Where decay has hollowed a closed
 * shell all round the pith that is thin enough to split or buckle before it bends ({@link
 * HollowFailure}), that lower moment counts. All shares 0 to 1.
 */
public final class TrunkStrength implements Process {
  private static final SectionModulus SECTION = new SectionModulus(SectorGrid.STANDARD);

  @Override
  public String name() {
    return "trunk strength";
  }

  @Override
  public List<String> sources() {
    return List.of("huang2017", "brazier1927");
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
        flatten(sections, s, context.parameters.strength());
      } else {
        sections.areaFraction[s] = 0;
        sections.strengthLoss[s] = 0;
        sections.wallRatio[s] = 1;
      }
    }
  }

  // Flattening lowers what bending alone would leave, and only in a closed shell.
  private static void flatten(Sections sections, int s, StrengthParameters p) {
    if (sections.open[s]) {
      return;
    }
    SectorHoles holes = sections.holes;
    int from = s * Sections.SECTORS;
    for (int i = from; i < from + Sections.SECTORS; i++) {
      if (holes.spans[i] == 0 || holes.innermostM(i) > 0) {
        return;
      }
    }
    double moment =
        HollowFailure.flattening(
            sections.wallRatio[s],
            p.stiffnessOverRupture(),
            p.acrossStiffness(),
            p.acrossStrength());
    sections.strengthLoss[s] = Math.max(sections.strengthLoss[s], 1 - moment);
  }

  // What an opening takes grows with the trunk; a hole that has not changed keeps its moments.
  private static void measure(Sections sections, int s, double radiusM) {
    int from = s * Sections.SECTORS;
    int at = s * Sections.MOMENTS;
    boolean open = sections.open[s];
    if (sections.changed[s]) {
      SECTION.missing(sections.holes, from, radiusM, sections.holeMoments, at);
      sections.changed[s] = open;
    }
    sections.areaFraction[s] = SECTION.areaFraction(sections.holeMoments, at, radiusM);
    sections.strengthLoss[s] =
        SECTION.loss(sections.holes, from, open, sections.holeMoments, at, radiusM);
    sections.wallRatio[s] = SECTION.wallRatio(sections.holeMoments, at, radiusM);
  }
}
