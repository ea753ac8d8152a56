package longbough.runner.drawing.elevation;

import longbough.model.state.Limbs;
import longbough.runner.drawing.look.Scatter;
import longbough.runner.drawing.look.SpeciesLook;

/**
 * Where the side branches of a limb hold their foliage. Each zone has a few clumps; a zone that has
 * lost shoots (low bud fullness) has fewer, so that thinning shows as gaps.
 */
final class Clumps {
  static final int PER_ZONE = 3;

  private static final double[] ZONE_START = {0.14, 0.42, 0.70};
  private static final double ZONE_LENGTH = 0.30;

  private final LimbLine line;
  private final boolean conifer;
  private final double thicknessM;

  Clumps(LimbLine line, double crownShareM, SpeciesLook look) {
    this.line = line;
    this.conifer = look.conifer();
    double tier = conifer ? 0.09 * line.lengthM : 0.2 * line.lengthM;
    thicknessM = tier + Math.min(Math.min(0.6, crownShareM), 0.25 * line.lengthM);
  }

  /** Number of clumps that a zone still has. */
  static int left(double budFullness) {
    double share = Math.max(0, Math.min(1, budFullness));
    return (int) Math.ceil(PER_ZONE * share - 0.05);
  }

  /** Position along the limb of one clump, 0 to 1 and a little beyond. */
  double along(int zone, int clump) {
    double within = (clump + 0.5 + 0.4 * Scatter.around(line.limb, zone * 16 + clump, 11)) / 3;
    return ZONE_START[zone] + ZONE_LENGTH * within;
  }

  /** Middle of one clump. */
  Spot middle(int zone, int clump) {
    double t = along(zone, clump);
    int key = zone * 16 + clump;
    double hand = (clump + line.limb) % 2 == 0 ? 1 : -1;
    double side = hand * sideReachM(t) * (0.35 + 0.65 * Scatter.unit(line.limb, key, 12));
    boolean atTip = zone == Limbs.OUTER && clump == PER_ZONE - 1;
    double above = thicknessM * 0.7 * Scatter.around(line.limb, key, 13);
    double up = conifer ? -0.4 * Math.abs(above) : above + drapeM(t);
    return line.beside(t, atTip ? 0.25 * side : side, up);
  }

  /** Where a bare side branch ends: without the weight of leaves it stands up. */
  Spot bareEnd(int zone, int clump) {
    double t = along(zone, clump);
    double hand = (clump + line.limb) % 2 == 0 ? 1 : -1;
    double share = 0.35 + 0.65 * Scatter.unit(line.limb, zone * 16 + clump, 12);
    double up = (conifer ? -0.02 : 0.11) * line.lengthM * (0.4 + share);
    return line.beside(t + 0.08, 0.8 * hand * share * sideReachM(t), up);
  }

  /** A place of one leaf cluster near the middle of its clump. */
  Spot leaf(int zone, int clump, int leaf) {
    int key = (zone * 16 + clump) * 1024 + leaf;
    double spread = (conifer ? 0.10 : 0.15) * line.lengthM + 0.12;
    double east = spread * bell(key, 21);
    double towards = spread * bell(key, 22);
    double up =
        conifer ? -Math.abs(0.5 * thicknessM * bell(key, 23)) : 0.8 * spread * bell(key, 23);
    return middle(zone, clump).plus(east, up, towards);
  }

  /** On a flat limb of a broadleaf foliage stands up near the trunk and hangs near the end, m. */
  private double drapeM(double t) {
    double flat = Math.max(0, line.flatness() - 0.6) / 0.4;
    return 0.3 * line.lengthM * flat * (0.55 - t);
  }

  /** How far side branches reach to the side at a share of the limb's length, m. */
  private double sideReachM(double t) {
    double shape = StrictMath.sin(Math.PI * Math.min(1, 0.12 + 0.74 * t));
    return (conifer ? 0.30 : 0.42) * line.lengthM * shape;
  }

  private double bell(int key, int draw) {
    return 0.8 * Scatter.around(line.limb, key, draw)
        + 0.5 * Scatter.around(line.limb, key, draw + 40);
  }
}
