package longbough.model.process;

import longbough.model.state.Limbs;

/**
 * How well the buds of a zone were fed while they formed.
 *
 * <pre>
 * f = min(1, L / (F b k)),   k = 1 - 1 / life where an evergreen has dropped its oldest leaves, else 1
 * </pre>
 *
 * L leaf area that its shoots have kept, F b what they would carry (m2); life leaf life (years).
 * The shoots of next spring lie ready in the buds of this summer, and shoots live on the leaves
 * beside them; so shoots that insects stripped are followed by fewer and shorter ones, while a
 * pruning leaves whole shoots. Source: branch growth after three years of leaf loss Heichel and
 * Turner 1984; Sprugel 2002.
 */
final class ShootFeed {

  private ShootFeed() {}

  /**
   * Share of its full leaf that a zone's shoots had.
   *
   * @param held share of a year's leaf that whole shoots hold at this time, 1
   */
  static double share(Limbs limbs, int zone, double held) {
    double whole = limbs.fullLeafAreaM2[zone] * limbs.budFullness[zone] * held;
    return whole > 0 ? Math.min(1, limbs.leafAreaM2[zone] / whole) : 1;
  }
}
