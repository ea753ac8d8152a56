package longbough.runner.drawing.elevation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import longbough.model.state.Limbs;
import longbough.model.state.TreeState;
import longbough.runner.drawing.look.Scatter;
import longbough.runner.drawing.scene.Outline;
import longbough.runner.drawing.scene.Shape;

/** Sets one leaf cluster for every so many square metres of leaf, zone by zone. */
final class FoliagePainter {
  /** Higher boughs lie over lower ones; neighbours in the file also make it smaller. */
  private static final Comparator<int[]> LOWEST_FIRST =
      Comparator.<int[]>comparingInt(place -> -place[1]).thenComparingInt(place -> place[0]);

  private final View view;
  private final FoliageMarks marks;
  private final double clusterM2;
  private final CrownBox crown;

  /** Places by layer, tone and variant. */
  private final List<List<int[]>> places = new ArrayList<>();

  FoliagePainter(View view, FoliageMarks marks, double clusterM2, CrownBox crown) {
    this.view = view;
    this.marks = marks;
    this.clusterM2 = clusterM2;
    this.crown = crown;
    for (int i = 0; i < View.LAYERS * marks.tones() * FoliageMarks.VARIANTS; i++) {
      places.add(new ArrayList<>());
    }
  }

  /** Adds the foliage of one limb. */
  void add(TreeState state, LimbLine line, Clumps clumps) {
    for (int zone = 0; zone < Limbs.ZONES; zone++) {
      int at = line.limb * Limbs.ZONES + zone;
      double area = Math.max(0, state.limbs.leafAreaM2[at]);
      int left = Math.max(1, Clumps.left(state.limbs.budFullness[at]));
      int clusters = Scatter.whole(area / clusterM2, line.limb, zone);
      for (int cluster = 0; cluster < clusters; cluster++) {
        int key = (line.limb * Limbs.ZONES + zone) * 1024 + cluster;
        Spot free = clumps.leaf(zone, cluster % left, cluster);
        set(crown.within(free, Scatter.unit(key, 2, 33)), key);
      }
    }
  }

  private void set(Spot spot, int key) {
    int layer = View.layer(spot.towardsM(), crown.radiusM());
    double light = crown.lightOn(spot) + 0.45 * Scatter.around(key, 0, 31);
    int tones = marks.tones();
    int tone = (int) Math.max(0, Math.min(tones - 1, Math.floor(tones * (0.5 + 0.55 * light))));
    int variant = variant(spot, key);
    places
        .get((layer * tones + tone) * FoliageMarks.VARIANTS + variant)
        .add(
            new int[] {
              Outline.tenths(view.x(spot.eastM())), Outline.tenths(view.y(spot.heightM()))
            });
  }

  /** Hanging twigs point outwards; for other marks any variant will do. */
  private int variant(Spot spot, int key) {
    double side = spot.eastM() / crown.radiusM() * 2 + 0.6 * Scatter.around(key, 1, 32);
    return side < -0.4 ? 0 : side > 0.4 ? 2 : 1;
  }

  /** The foliage of one layer, darkest first. */
  void paint(int layer, List<Shape> onto) {
    int tones = marks.tones();
    for (int tone = 0; tone < tones; tone++) {
      for (int variant = 0; variant < FoliageMarks.VARIANTS; variant++) {
        List<int[]> here = places.get((layer * tones + tone) * FoliageMarks.VARIANTS + variant);
        if (!here.isEmpty()) {
          here.sort(LOWEST_FIRST);
          onto.add(new Shape.Stamps(marks.leaf(tone, variant), here));
        }
      }
    }
  }
}
