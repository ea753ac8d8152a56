package longbough.runner.drawing.section;

import java.util.ArrayList;
import java.util.List;
import longbough.model.state.Sections;
import longbough.model.state.SectorHoles;
import longbough.model.state.TreeState;
import longbough.model.state.Trunk;
import longbough.model.state.Wounds;
import longbough.runner.drawing.look.Palette;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;
import longbough.runner.drawing.scene.Style;

/** One cross-section, north up: bark, rings, heartwood, decay, barrier zones, thinnest wall. */
final class CrossSectionPainter {
  /** Yearly rings are too fine to print; every so many are drawn. */
  static final int RING_YEARS = 5;

  private static final double SHORTEST_SPAN = 3;
  private static final int ARC_STEPS = 10;

  private final TreeState state;
  private final int station;
  private final double radiusM;
  private final double x;
  private final double y;
  private final double scale;

  CrossSectionPainter(TreeState state, int station, double x, double y, double scale) {
    this.state = state;
    this.x = x;
    this.y = y;
    this.scale = scale;
    this.station = station;
    radiusM = Math.max(0, state.trunk.radiusM[station]);
  }

  List<Shape> paint(boolean[] shown) {
    List<Shape> onto = new ArrayList<>();
    disc(onto, radiusM, Style.fill(Palette.SAPWOOD).edged(Palette.BARK, 3.4));
    shown[SectionLegend.SAPWOOD] = true;
    double core = radiusM * Math.sqrt(Math.max(0, Math.min(1, 1 - state.trunk.sapwoodShare)));
    if (scale * core > 1) {
      disc(onto, core, Style.fill(Palette.HEARTWOOD));
      shown[SectionLegend.HEARTWOOD] = true;
    }
    rings(onto, shown);
    Outline decay = DecayOutline.of(state.sections, station, x, y, scale);
    if (!decay.isEmpty()) {
      Style style = Style.fill(Palette.DECAY).edged(Palette.DECAY_EDGE, 0.8);
      onto.add(new Shape.Path(decay, style));
      shown[SectionLegend.DECAY] = true;
    }
    barriers(onto, shown);
    openFaces(onto, shown);
    if (!decay.isEmpty()) {
      thinnestWall(onto, shown);
    }
    return onto;
  }

  private void disc(List<Shape> onto, double ofRadiusM, Style style) {
    double radius = scale * ofRadiusM;
    onto.add(new Shape.Ellipse(x, y, radius, radius, style));
  }

  private void rings(List<Shape> onto, boolean[] shown) {
    Trunk trunk = state.trunk;
    double breast = trunk.stations > 0 ? trunk.radiusAtM(Trunk.BREAST_HEIGHT_M) : 0;
    int rings = Math.min(trunk.rings, Trunk.MAX_YEARS);
    for (int ring = 0; breast > 0 && ring < rings - 1; ring += RING_YEARS) {
      double radius = trunk.ringRadiusM[ring] / breast * radiusM;
      if (radius > 0 && radius <= radiusM) {
        disc(onto, radius, Style.line(Palette.RING, ring == 0 ? 1.8 : 0.8));
        shown[SectionLegend.RINGS] = true;
      }
    }
  }

  private void openFaces(List<Shape> onto, boolean[] shown) {
    OpenFace open = new OpenFace(x, y);
    List<Shape> faces = new ArrayList<>();
    for (int sector = 0; sector < Sections.SECTORS; sector++) {
      int at = station * Sections.SECTORS + sector;
      if (state.sections.holes.open[at]) {
        double face = scale * state.sections.holes.openFromM[at];
        open.gap(sector, face, scale * radiusM, onto);
        open.face(sector, face, faces);
        shown[SectionLegend.OPEN] = true;
      }
    }
    onto.addAll(faces);
  }

  private void barriers(List<Shape> onto, boolean[] shown) {
    // A column shows in the station nearest to it, as in the state's sections.
    double height = station * Trunk.STATION_STEP_M;
    TrunkProfile profile = new TrunkProfile(state, 0, 0, 1, 1);
    Wounds wounds = state.wounds;
    for (int wound = 0; wound < wounds.count; wound++) {
      boolean here =
          wounds.limb[wound] == Wounds.ON_TRUNK
              && !wounds.acrossStem[wound]
              && wounds.columnDepthM[wound] > 0
              && height > profile.lowM(wound) - Trunk.STATION_STEP_M / 2
              && height < profile.highM(wound) + Trunk.STATION_STEP_M / 2;
      double bound = here ? profile.boundM(wound, height) : 0;
      if (bound > 0) {
        double half = Math.min(Math.PI, wounds.columnHalfWidthM[wound] / bound + 0.15);
        Outline arc = arc(wounds.azimuthRad[wound], half, bound);
        double deep = scale * wounds.columnDepthM[wound];
        onto.addAll(Barrier.draw(arc, Math.min(2 * deep, 2 * half * scale * bound)));
        shown[SectionLegend.BARRIER] = true;
      }
    }
  }

  private Outline arc(double middleRad, double halfRad, double ofRadiusM) {
    Outline arc = new Outline();
    for (int step = 0; step <= ARC_STEPS; step++) {
      double turn = middleRad + halfRad * (2.0 * step / ARC_STEPS - 1);
      double px = x + scale * ofRadiusM * StrictMath.sin(turn);
      double py = y - scale * ofRadiusM * StrictMath.cos(turn);
      if (step == 0) {
        arc.move(px, py);
      } else {
        arc.line(px, py);
      }
    }
    return arc;
  }

  /** The bearing along which least sound wood is left between pith and surface. */
  private void thinnestWall(List<Shape> onto, boolean[] shown) {
    SectorHoles holes = state.sections.holes;
    int from = station * Sections.SECTORS;
    int thinnest = 0;
    double least = Double.MAX_VALUE;
    for (int sector = 0; sector < Sections.SECTORS; sector++) {
      double wood = holes.soundM(from + sector, radiusM);
      if (holes.any(from + sector) && wood < least) {
        least = wood;
        thinnest = sector;
      }
    }
    int at = from + thinnest;
    double end = holes.open[at] ? Math.min(radiusM, holes.openFromM[at]) : radiusM;
    double start = 0;
    int first = at * SectorHoles.SPANS;
    for (int span = first; span < first + holes.spans[at]; span++) {
      span(onto, shown, thinnest, start, Math.min(end, holes.innerM[span]));
      start = holes.outerM[span];
    }
    span(onto, shown, thinnest, start, end);
  }

  private void span(List<Shape> onto, boolean[] shown, int sector, double fromM, double toM) {
    double from = scale * fromM;
    double to = scale * toM;
    if (to - from > SHORTEST_SPAN) {
      double east = StrictMath.sin(DecayOutline.bearingRad(sector));
      double south = -StrictMath.cos(DecayOutline.bearingRad(sector));
      onto.addAll(span(x + from * east, y + from * south, x + to * east, y + to * south));
      shown[SectionLegend.WALL] = true;
    }
  }

  /** A measured distance: a dark line on a white one, with dots at its ends. */
  static List<Shape> span(double x1, double y1, double x2, double y2) {
    Outline line = new Outline().move(x1, y1).line(x2, y2);
    Style dot = Style.fill(Palette.TEXT);
    return List.of(
        new Shape.Path(line, Style.line("#ffffff", 4)),
        new Shape.Path(line, Style.line(Palette.TEXT, 1.8)),
        new Shape.Ellipse(x1, y1, 2.6, 2.6, dot),
        new Shape.Ellipse(x2, y2, 2.6, 2.6, dot));
  }
}
