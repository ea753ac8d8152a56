package longbough.model.state;

/**
 * Decay in the trunk's cross-sections on a polar grid: for each station and sector the decayed
 * spans, each column where it lies. Derived each year from the wounds.
 */
public final class Sections {
  /** Sectors of one section; the first is centred on north. */
  public static final int SECTORS = 72;

  /** Numbers that {@link #holeMoments} has for each station. */
  public static final int MOMENTS = 8;

  /** Spans and openings, SECTORS for each station. */
  public final SectorHoles holes = new SectorHoles(Trunk.MAX_STATIONS * SECTORS);

  /** Whether a station has any decay. */
  public final boolean[] decayed = new boolean[Trunk.MAX_STATIONS];

  /** Whether any sector of a station lies open. */
  public final boolean[] open = new boolean[Trunk.MAX_STATIONS];

  /** Whether the decay of a station has changed since its moments were taken. */
  public final boolean[] changed = new boolean[Trunk.MAX_STATIONS];

  /**
   * Area (m2), first (m3) and second moments (m4) of the wood that each station misses, and the
   * most that it misses along a ray (m).
   */
  public final double[] holeMoments = new double[Trunk.MAX_STATIONS * MOMENTS];

  /** Share of the section that is decayed, by station. */
  public final double[] areaFraction = new double[Trunk.MAX_STATIONS];

  /** Share of the section modulus lost about the weakest axis, by station. */
  public final double[] strengthLoss = new double[Trunk.MAX_STATIONS];

  /** Least sound wood between pith and surface over the radius, by station: 1 where sound. */
  public final double[] wallRatio = new double[Trunk.MAX_STATIONS];

  /** Makes a station sound. */
  public void clear(int station) {
    holes.clear(station * SECTORS, SECTORS);
    decayed[station] = false;
    open[station] = false;
    changed[station] = true;
  }

  /** Decay between two radii of one sector of a station, m. */
  public void decay(int station, int sector, double innerM, double outerM) {
    if (holes.add(station * SECTORS + sector, innerM, outerM)) {
      decayed[station] = true;
      changed[station] = true;
    }
  }

  /** Opens one sector of a station from a radius outwards, m. */
  public void open(int station, int sector, double fromM) {
    holes.open(station * SECTORS + sector, fromM);
    open[station] = true;
    changed[station] = true;
  }

  /** Closes all openings of a station; its decay stays. */
  public void close(int station) {
    if (open[station]) {
      holes.close(station * SECTORS, SECTORS);
      open[station] = false;
      changed[station] = true;
    }
  }

  public void copyFrom(Sections other) {
    holes.makeRoomLike(other.holes);
    for (int s = 0; s < Trunk.MAX_STATIONS; s++) {
      // A station sound and closed in both has nothing to copy.
      if (decayed[s] || other.decayed[s] || open[s] || other.open[s]) {
        holes.copyFrom(other.holes, s * SECTORS, SECTORS);
      }
    }
    System.arraycopy(other.decayed, 0, decayed, 0, decayed.length);
    System.arraycopy(other.open, 0, open, 0, open.length);
    System.arraycopy(other.changed, 0, changed, 0, changed.length);
    System.arraycopy(other.holeMoments, 0, holeMoments, 0, holeMoments.length);
    System.arraycopy(other.areaFraction, 0, areaFraction, 0, areaFraction.length);
    System.arraycopy(other.strengthLoss, 0, strengthLoss, 0, strengthLoss.length);
    System.arraycopy(other.wallRatio, 0, wallRatio, 0, wallRatio.length);
  }
}
